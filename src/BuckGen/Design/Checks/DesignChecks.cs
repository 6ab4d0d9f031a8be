using System.Collections.Immutable;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>Asks all design checks.</summary>
internal static class DesignChecks
{
    /// <summary>The checks that come with the library, in the order in which they run.</summary>
    public static ImmutableArray<IDesignCheck> BuiltIn { get; } =
    [
        new DraftCheck(), new DepthCheck(), new DrawCheck(), new WebCheck(), new CounterCheck(), new NeckCheck(),
        new CornerCheck(),
        new StepCheck(), new LedgeCheck(), new EdgeCheck(), new GrainCheck(), new FormerCheck(),
    ];

    /// <summary>The findings of all checks.</summary>
    public static IEnumerable<Finding> Run(DesignView design, ImmutableArray<IDesignCheck> checks, CancellationToken cancellation)
    {
        // A shape that vanishes has nothing left to look at but the draft that made it vanish; other findings say so.
        var vanishes = design.Shape.At(design.Shape.Foot, cancellation).IsEmpty
            || design.Shape.At(design.Shape.Face, cancellation).IsEmpty;
        foreach (var check in checks.Where(c => !vanishes || c is DraftCheck))
        {
            cancellation.ThrowIfCancellationRequested();
            var (findings, failure) = ForeignCode.Call(check, () => check.Name, () => CheckResult.Run(check, design));
            foreach (var finding in failure is null ? findings : [failure]) yield return finding;
        }
    }
}
