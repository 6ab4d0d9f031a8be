namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// Offsets an outline with chords in place of very flat arcs, whose centres lie too far away for the exact offset.
/// </summary>
/// <remarks>
/// A distance of a thousand kilometres is known to a ten-millionth of a millimetre only, which is coarser than the exact offset
/// needs.
/// </remarks>
/// <param name="offsetter">Makes the offset.</param>
/// <param name="deviation">Maximum distance, mm, between an arc and its chords.</param>
internal sealed class FlatArcOffsetter(IOffsetter offsetter, double deviation) : IOffsetter
{
    /// <summary>Maximum radius, mm, that stays an arc.</summary>
    private const double MaxRadius = 1e6;

    /// <inheritdoc/>
    public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(region);
        return offsetter.Offset(Region.FromLoops(region.Loops.Select(l => Loop.FromSegments([.. l.Segments.SelectMany(Chords)]))),
            distance, join, cancellation);
    }

    private IEnumerable<Segment> Chords(Segment piece)
    {
        // The height of an arc over its chord falls with the square of the number of chords.
        var count = piece.IsArc && piece.Radius > MaxRadius ? (int)Math.Ceiling(Math.Sqrt(piece.Sagitta / deviation)) : 0;
        return count == 0 ? [piece] : Enumerable.Range(0, count)
            .Select(k => new Segment(piece.PointAt((double)k / count), piece.PointAt((k + 1.0) / count)));
    }
}
