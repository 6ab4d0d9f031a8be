using BuckGen.Geometry.Facing;

namespace BuckGen.Outlines.Measuring;

/// <summary>What decides how an outline can be cut and how sturdy it is; lengths in mm, angles in degrees.</summary>
/// <remarks>
/// Everything is measured on lines and arcs and is exact for them but for rounding. Where curves were fitted, a width may differ from
/// the drawn one by twice <paramref name="Error"/>, and a radius is that of the fitted arc.
/// </remarks>
/// <param name="NarrowestNeck">The smallest width of the region between two edges that face each other; null when none do.</param>
/// <param name="NarrowestGap">The smallest open width between two edges that face each other; null when none do.</param>
/// <param name="SmallestInsideRadius">The tightest arc that a router bit has to fit into; null when no arc curves inward.</param>
/// <param name="SmallestOutsideRadius">The tightest arc that sticks out; null when no arc curves outward.</param>
/// <param name="SharpestCorner">The corner with the smallest angle; null when every joint is smooth.</param>
/// <param name="Error">The largest distance between a drawn curve and the edge that was measured, mm; 0 for a drawing without curves.</param>
internal sealed record OutlineMeasures(
    Neck? NarrowestNeck, Gap? NarrowestGap, RoundEdge? SmallestInsideRadius, RoundEdge? SmallestOutsideRadius,
    EdgeCorner? SharpestCorner, double Error)
{
    /// <summary>Measures an outline.</summary>
    public static OutlineMeasures Of(Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var (region, error) = (outline.Region, outline.Curves.LargestError);
        if (region.IsEmpty) return new(null, null, null, null, null, error);
        var tree = new EdgeTree(EdgePiece.Of(region));
        return new(
            NarrowestPlace.Find(tree, wood: true, error) is { } neck ? new(neck.A, neck.B) : null,
            NarrowestPlace.Find(tree, wood: false, error) is { } gap ? new(gap.A, gap.B, Gaps.KindOf(gap, region)) : null,
            Radii.Smallest(tree.Pieces, inside: true), Radii.Smallest(tree.Pieces, inside: false),
            Corners.Sharpest(tree.Pieces), error);
    }
}
