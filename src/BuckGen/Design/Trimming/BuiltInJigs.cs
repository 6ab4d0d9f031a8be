using System.Collections.Immutable;
using BuckGen.Design.Bucks;

namespace BuckGen.Design.Trimming;

/// <summary>The jigs that come with the library.</summary>
internal static class BuiltInJigs
{
    public static ImmutableArray<IJig> All { get; } = [new Ring(), new Flange(), new Panel()];

    private sealed class Ring : IJig
    {
        public string Name => "ring";

        public JigParts? Make(PartShell part, BuckSpec spec) => spec.Jig is { } jig ? TrimJig.Create(part, jig, spec) : null;
    }

    private sealed class Flange : IJig
    {
        public string Name => "flange";

        public JigParts? Make(PartShell part, BuckSpec spec) =>
            spec.Flange is { } flange ? FlangeTemplate.Create(part, flange, spec.Jig?.Clearance ?? new JigSpec().Clearance, spec) : null;
    }

    private sealed class Panel : IJig
    {
        public string Name => "panel";

        public JigParts? Make(PartShell part, BuckSpec spec) => spec.Panel is { } panel ? FacePanel.Create(part, panel, spec) : null;
    }
}
