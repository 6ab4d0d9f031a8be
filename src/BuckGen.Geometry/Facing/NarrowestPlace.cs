namespace BuckGen.Geometry.Facing;

/// <summary>The narrowest place on one side of an edge.</summary>
/// <param name="A">One end of the way across.</param>
/// <param name="B">The other end.</param>
/// <param name="LoopA">Number of the loop on which one end lies.</param>
/// <param name="LoopB">Number of the loop on which the other lies.</param>
/// <remarks>
/// A narrow place is a pair of points at which the edge runs square to the line that joins them. The circle on that line as
/// diameter holds no other point of the edge. Its middle is a place of the medial axis at which the distance to the edge is
/// neither growing nor shrinking. This alone leaves out the tip of a wedge, be it sharp, cut off or rounded: its sides are not
/// square to any line across it. It also leaves out neighbours on one smooth curve: the way round the edge is never shorter than
/// half the circle, 1.57 times the width.
/// <para>
/// The width is the true distance of two points of the edge, exact but for rounding. Whether a pair counts is decided with some
/// slack, so that a drawing's rounding does not hide a place: see <see cref="AngleTolerances"/>. The edge may enter the circle by
/// a thousandth of its radius and by twice the error with which curves were fitted. Where lines stand for a curve, it may also
/// enter by what they cut off from it. On a curve of many short lines the slack lets a neighbouring pair be found, narrower by a
/// few millionths of the radius of curvature.
/// </para>
/// <para>
/// The search goes from the nearest pairs of stretches to the farther ones. A pair of stretches is dropped when its edges cannot
/// run square to any line between the two, or when another edge lies in every circle between them. It is also dropped when they
/// lie farther apart than a place that is found already. What is left grows about in proportion to the number of pieces. Of
/// several places of equal width the middle of a stretch is taken before its ends, then the lowest, then the leftmost.
/// </para>
/// </remarks>
internal sealed record NarrowestPlace(Vec2 A, Vec2 B, int LoopA, int LoopB)
{
    /// <summary>Finds it.</summary>
    /// <param name="tree">The edge.</param>
    /// <param name="wood">True to look into the region, false to look outside.</param>
    /// <param name="error">Maximum distance between a drawn curve and the edge that stands for it, mm.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static NarrowestFound Find(EdgeTree tree, bool wood, double error, CancellationToken cancellation = default) =>
        new NarrowestSearch(tree, wood, error, cancellation).Find();
}

/// <summary>The result of a search.</summary>
/// <param name="Place">The narrowest place found; null when there is none.</param>
/// <param name="SearchedTo">The width, mm, up to which there is surely no narrower place; null when the search finished.</param>
internal sealed record NarrowestFound(NarrowestPlace? Place, double? SearchedTo);
