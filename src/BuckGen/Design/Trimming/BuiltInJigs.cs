using System.Collections.Immutable;

namespace BuckGen.Design.Trimming;

/// <summary>The jigs that come with the library.</summary>
internal static class BuiltInJigs
{
    public static ImmutableArray<IJig> All { get; } = [new Ring(), new Flange(), new Panel()];

    private sealed class Ring : IJig
    {
        public string Name => "ring";

        public JigParts? Make(PartShell part, TrimmingSpec spec) =>
            spec.Jig is { } jig ? TrimJig.Create(part, jig, spec.Stack) : null;
    }

    private sealed class Flange : IJig
    {
        public string Name => "flange";

        public JigParts? Make(PartShell part, TrimmingSpec spec) =>
            spec.Flange is { } flange
                ? FlangeTemplate.Create(part, flange, spec.Jig?.Clearance ?? new JigSpec().Clearance, spec.Stack)
                : null;
    }

    private sealed class Panel : IJig
    {
        public string Name => "panel";

        public JigParts? Make(PartShell part, TrimmingSpec spec) =>
            spec.Panel is { } panel ? FacePanel.Create(part, panel, spec) : null;
    }
}
