using BuckGen.Geometry.Facing;

namespace BuckGen.Intake.Measuring;

/// <summary>Finds the sharpest corner.</summary>
internal static class Corners
{
    /// <summary>Turns that differ by less, radians, are equal: so that rounding does not choose between them.</summary>
    private const double Same = 1e-7;

    /// <summary>
    /// The corner with the largest turn, the lowest and then the leftmost of equals; null when every joint is smooth.
    /// </summary>
    /// <param name="pieces">The edge, region to the left.</param>
    public static EdgeCorner? Sharpest(EdgePiece[] pieces)
    {
        var most = pieces.Max(p => Math.Abs(p.Turn));
        if (most < AngleTolerances.NoCorner) return null;
        var sharpest = pieces.Where(p => Math.Abs(p.Turn) >= most - Same).MinBy(p => PlaceOrder.SortKey(p.Segment.Start));
        return new((Math.PI - most) * 180 / Math.PI, sharpest.Turn < 0, sharpest.Segment.Start);
    }
}
