namespace BuckGen.Geometry.Offsetting;

/// <summary>Offsets an outline without its tiny pieces, which moves its edge by no more than their size.</summary>
/// <param name="offsetter">Makes the offset.</param>
internal sealed class TidiedOffsetter(IOffsetter offsetter) : IOffsetter
{
    /// <inheritdoc/>
    public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(region);
        return offsetter.Offset(Region.FromLoops(region.Loops.Select(TinyPieces.Remove)), distance, join, cancellation);
    }
}
