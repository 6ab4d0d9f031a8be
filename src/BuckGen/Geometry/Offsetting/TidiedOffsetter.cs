namespace BuckGen.Geometry.Offsetting;

/// <summary>Offsets an outline without its tiny pieces, which moves its edge by a thousandth of a millimetre at most there.</summary>
/// <param name="offsetter">Makes the offset.</param>
internal sealed class TidiedOffsetter(IOffsetter offsetter) : IOffsetter
{
    /// <inheritdoc/>
    public Region Offset(Region region, double distance, CornerJoin join)
    {
        ArgumentNullException.ThrowIfNull(region);
        return offsetter.Offset(Region.FromLoops(region.Loops.Select(TinyPieces.TakenOut)), distance, join);
    }
}
