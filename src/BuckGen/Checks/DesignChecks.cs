using System.Collections.Immutable;
using BuckGen.Findings;

namespace BuckGen.Checks;

/// <summary>All design checks, in the order in which they are asked.</summary>
internal static class DesignChecks
{
    private static readonly DraftCheck Draft = new();

    private static readonly ImmutableArray<IDesignCheck> All =
    [
        new DepthCheck(), new DrawCheck(), new WebCheck(), new CounterCheck(), new NeckCheck(), new CornerCheck(),
        new StepCheck(), new GrainCheck(), new FormerCheck(),
    ];

    /// <summary>The findings of all checks.</summary>
    public static IEnumerable<Finding> Of(DesignView design) =>
        // A shape that vanishes has nothing left to look at but the draft that made it vanish; other findings say so.
        design.Shape.At(design.Shape.Foot).IsEmpty || design.Shape.At(design.Shape.Face).IsEmpty
            ? Draft.Look(design)
            : Draft.Look(design).Concat(All.SelectMany(c => c.Look(design)));
}
