namespace BuckGen.Geometry;

/// <summary>The lengths below which the exact offset treats differences as rounding.</summary>
internal static class Precision
{
    /// <summary>A point this much too near to the outline, mm, still counts as at the distance.</summary>
    public const double Depth = 1e-9;

    /// <summary>A piece shorter than this, mm, is left out.</summary>
    public const double MinPieceLength = 1e-6;

    /// <summary>Ends nearer than this, mm, are joined.</summary>
    public const double Join = 1e-5;

    /// <summary>
    /// Ends this near, mm, may belong together. Where two edges of the offset meet at nearly no angle, a depth below
    /// <see cref="Depth"/> leaves a gap of this size where they meet.
    /// </summary>
    public static double Reach(double distance) => Math.Max(Join, 3 * Math.Sqrt(2 * Math.Abs(distance) * Depth));

    /// <summary>A turn below this angle, in radians, is taken as smooth: both sides get one common end point.</summary>
    /// <remarks>At this turn the ends would overlap by less than can be distinguished at <see cref="Depth"/>.</remarks>
    public static double SmoothTurn(double distance) => 2 * Math.Sqrt(8 * Depth / distance);
}
