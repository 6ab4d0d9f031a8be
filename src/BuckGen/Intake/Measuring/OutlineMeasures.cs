using System.Collections.Immutable;
using BuckGen.Geometry.Facing;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Measuring;

/// <summary>What decides how an outline can be cut and how sturdy it is; lengths in mm, angles in degrees.</summary>
/// <remarks>
/// Everything is measured on lines and arcs and is exact for them but for rounding. Where curves were fitted, a width may differ
/// from the drawn one by twice <paramref name="Error"/>, and a radius is that of the fitted arc.
/// </remarks>
/// <param name="NarrowestNeck">The smallest width of the region between two edges that face each other; null when none
/// do.</param>
/// <param name="NarrowestGap">The smallest open width between two edges that face each other; null when none do.</param>
/// <param name="MinInsideRadius">The tightest arc that a router bit has to fit into; null when no arc curves inward.</param>
/// <param name="MinOutsideRadius">The tightest arc that sticks out; null when no arc curves outward.</param>
/// <param name="SharpestCorner">The corner with the smallest angle; null when every joint is smooth.</param>
/// <param name="Error">The maximum distance between a drawn curve and the edge that was measured, mm; 0 for a drawing without
/// curves.</param>
internal sealed record OutlineMeasures(
    Neck? NarrowestNeck, Gap? NarrowestGap, RoundEdge? MinInsideRadius, RoundEdge? MinOutsideRadius,
    EdgeCorner? SharpestCorner, double Error)
{
    /// <summary>What could not be measured to its end.</summary>
    public ImmutableArray<ReadNote> Notes { get; private init; } = [];

    /// <summary>Measures an outline.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static OutlineMeasures Measure(Outline outline, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var (region, error) = (outline.Region, outline.Curves.MaxError);
        if (region.IsEmpty) return new(null, null, null, null, null, error);
        var tree = new EdgeTree(EdgePiece.FromRegion(region));
        var neck = NarrowestPlace.Find(tree, wood: true, error, cancellation);
        var gap = NarrowestPlace.Find(tree, wood: false, error, cancellation);
        return new(
            neck.Place is { } across ? new(across.A, across.B) : null,
            gap.Place is { } open ? new(open.A, open.B, Gaps.KindOf(open, region)) : null,
            Radii.Min(tree.Pieces, inside: true), Radii.Min(tree.Pieces, inside: false),
            Corners.Sharpest(tree.Pieces), error)
        {
            Notes = [.. Unfinished("neck", neck, tree), .. Unfinished("gap", gap, tree)],
        };
    }

    private static IEnumerable<ReadNote> Unfinished(string what, NarrowestFound found, EdgeTree tree)
    {
        if (found.SearchedTo is { } width)
            yield return new("measure-unfinished", FormattableString.Invariant(
                $"The search for the narrowest {what} stopped early, because {tree.Pieces.Length} lines and arcs face each ")
                + FormattableString.Invariant(
                    $"other in too many places. None is narrower than {width:0.###} mm, but one may be narrower than the ")
                    + "one named. Simplify the drawing for an exact width.");
    }
}
