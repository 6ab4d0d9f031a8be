using BuckGen.Design.Forming;
using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>
/// The plug of a cavity: a block with upright sides, smaller than the floor by the same gap all round, and with a flat bottom.
/// </summary>
/// <param name="floor">Distance in plan from the outline of the floor.</param>
/// <param name="gap">Gap round the plug, mm.</param>
/// <param name="bottom">Height of its bottom, mm.</param>
internal sealed class FloorPlug(PlanDistance floor, double gap, double bottom) : ITool
{
    /// <inheritdoc/>
    public double SignedDistance(Vec3 point)
    {
        var (aside, below) = (floor.At(point.Plan) + gap, bottom - point.Z);
        return aside > 0 && below > 0 ? Math.Sqrt(aside * aside + below * below) : Math.Max(aside, below);
    }

    /// <summary>How deep a plug goes below the rim, mm; null for no plug, or for one that would go through the floor.</summary>
    /// <param name="former">The plug that is wanted.</param>
    /// <param name="depth">Depth of the cavity, mm.</param>
    public static double? DepthOf(FormerSpec former, double depth) =>
        former.PlugGap is { } gap && (former.PlugDepth ?? depth - gap) is > 0 and var wanted && wanted <= depth ? wanted : null;
}
