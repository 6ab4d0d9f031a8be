namespace BuckGen.Physics.Plates;

/// <summary>How far apart the ribs or feet under a board may stand.</summary>
internal static class SupportSpacing
{
    /// <summary>Farthest feet stand apart, in sides of a foot.</summary>
    private const double MaxSides = 20;

    /// <summary>Largest distance between the middles of parallel ribs, mm, for a board over three ribs or more.</summary>
    /// <remarks>
    /// The outermost of three bays bends most and the middle rib of two bays bears the greatest moment; both are kept to.
    /// </remarks>
    /// <param name="thickness">Thickness of the board, mm, 0.2 to 100.</param>
    /// <param name="board">What it is made of.</param>
    /// <param name="deflection">Deflection allowed, mm, 0.001 to 100.</param>
    /// <param name="pressure">Pressure, Pa, 1 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static double MaxRibSpacing(double thickness, BoardProperties board, double deflection, double pressure = PlateFactors.Atmosphere)
    {
        var worst = new PlateFactors(ContinuousStrip.ForBays(3).Deflection, ContinuousStrip.ForBays(2).Moment);
        return worst.MaxSpan(thickness, board, deflection, pressure);
    }

    /// <summary>
    /// The least number of equal bays that ribs must divide a width into, the outermost ribs standing at its two sides.
    /// </summary>
    /// <param name="width">From the middle of the first rib to the middle of the last, mm, 1 to 10 000.</param>
    /// <param name="thickness">Thickness of the board, mm, 0.2 to 100.</param>
    /// <param name="board">What it is made of.</param>
    /// <param name="deflection">Deflection allowed, mm, 0.001 to 100.</param>
    /// <param name="pressure">Pressure, Pa, 1 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range, or even 1000 bays are too few.</exception>
    public static int MinBays(
        double width, double thickness, BoardProperties board, double deflection, double pressure = PlateFactors.Atmosphere)
    {
        Bound.Check(width, 1, 10_000, "width", " mm");
        var bays = 1;
        while (ContinuousStrip.ForBays(bays).MaxSpan(thickness, board, deflection, pressure) < width / bays) bays++;
        return bays;
    }

    /// <summary>Largest distance between the middles of square feet on a square grid, mm.</summary>
    /// <param name="footSide">Side of a foot, mm, 1 to 1000.</param>
    /// <param name="thickness">Thickness of the board, mm, 0.2 to 100.</param>
    /// <param name="board">What it is made of.</param>
    /// <param name="deflection">Deflection allowed, mm, 0.001 to 100.</param>
    /// <param name="pressure">Pressure, Pa, 1 to 1 000 000.</param>
    /// <returns>At most 20 times the side of a foot; null when even feet nearly side by side, 1.12 times their side apart, are
    /// too far.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static double? MaxFootSpacing(
        double footSide, double thickness, BoardProperties board, double deflection, double pressure = PlateFactors.Atmosphere)
    {
        ArgumentNullException.ThrowIfNull(board);
        Bound.Check(footSide, 1, 1000, "side of a foot", " mm");
        // Of a side over 20 times itself rounding leaves a hair less than a twentieth.
        bool Holds(double distance) =>
            PadPlate.ForPads(Math.Max(footSide / distance, 1 / MaxSides), board.PoissonRatio).MaxSpan(thickness, board, deflection, pressure) >= distance;

        var (near, far) = (footSide * 1.12, footSide * MaxSides);
        if (Holds(far)) return far;
        if (!Holds(near)) return null;
        return IntervalHalving.Narrow(near, far, Holds, count: 30).Low;
    }
}
