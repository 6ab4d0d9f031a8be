namespace BuckGen.Geometry.Offsetting;

/// <summary>The offset of a region, for callers.</summary>
public static class RegionOffset
{
    /// <summary>
    /// The region with its edge moved by a distance. Lines and arcs stay lines and arcs where that is possible. The result is
    /// verified: every point of its edge lies at the distance, on the right side.
    /// </summary>
    /// <param name="region">The region.</param>
    /// <param name="distance">How far the edge moves, mm: above 0 outward, below 0 inward.</param>
    /// <param name="join">How corners are joined.</param>
    /// <param name="tolerance">The tolerances of the run; <see cref="Tolerance.Default"/> when left out.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The moved region; empty when nothing is left of it.</returns>
    /// <exception cref="OffsetFailedException">No offset that keeps the distance was found.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not a number, or the mitre limit is below 1.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static Region Offset(
        this Region region, double distance, CornerJoin join, Tolerance? tolerance = null,
        CancellationToken cancellation = default) =>
        CheckedOffsetter.Standard(tolerance ?? Tolerance.Default).Offset(region, distance, join, cancellation);
}
