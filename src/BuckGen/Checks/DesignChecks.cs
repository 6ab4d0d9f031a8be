using System.Collections.Immutable;
using BuckGen.Findings;

namespace BuckGen.Checks;

/// <summary>All design checks, in the order in which they are asked.</summary>
internal static class DesignChecks
{
    private static readonly ImmutableArray<IDesignCheck> All =
    [
        new DraftCheck(), new DepthCheck(), new DrawCheck(), new WebCheck(), new CounterCheck(), new NeckCheck(), new CornerCheck(),
        new StepCheck(), new GrainCheck(), new FormerCheck(),
    ];

    /// <summary>The findings of all checks.</summary>
    public static IEnumerable<Finding> Of(DesignView design) =>
        // A shape that vanishes has nothing left to look at; other findings say so.
        design.Shape.At(design.Shape.Foot).IsEmpty || design.Shape.At(design.Shape.Face).IsEmpty ? [] : All.SelectMany(c => c.Look(design));
}
