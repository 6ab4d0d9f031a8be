namespace BuckGen.Physics.Plates;

/// <summary>How far apart ribs or feet under a board may stand.</summary>
public static class SupportSpacing
{
    /// <summary>Largest distance between feet, in sides of a foot.</summary>
    private const double MaxSides = 20;

    /// <summary>Largest distance between the centres of parallel ribs, mm, for a board on three ribs or more.</summary>
    /// <remarks>
    /// The outermost of three bays has the largest deflection and the middle rib of two bays the largest moment; the result
    /// satisfies both.
    /// </remarks>
    /// <param name="thickness">Thickness of the board, mm, 0.2 to 100.</param>
    /// <param name="board">Elastic properties and strength of the board.</param>
    /// <param name="deflection">Allowable deflection, mm, 0.001 to 100.</param>
    /// <param name="pressure">Pressure, Pa, 1 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double MaxRibSpacing(
        double thickness, BoardProperties board, double deflection, double pressure = PlateFactors.Atmosphere)
    {
        var worst = new PlateFactors(ContinuousStrip.ForBays(3).Deflection, ContinuousStrip.ForBays(2).Moment);
        return worst.MaxSpan(thickness, board, deflection, pressure);
    }

    /// <summary>
    /// The smallest number of equal bays into which ribs must divide a width; the outermost ribs stand at its two sides.
    /// </summary>
    /// <param name="width">From the centre of the first rib to the centre of the last, mm, 1 to 10 000.</param>
    /// <param name="thickness">Thickness of the board, mm, 0.2 to 100.</param>
    /// <param name="board">Elastic properties and strength of the board.</param>
    /// <param name="deflection">Allowable deflection, mm, 0.001 to 100.</param>
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

    /// <summary>Largest distance between the centres of square feet on a square grid, mm.</summary>
    /// <param name="footSide">Side of a foot, mm, 1 to 1000.</param>
    /// <param name="thickness">Thickness of the board, mm, 0.2 to 100.</param>
    /// <param name="board">Elastic properties and strength of the board.</param>
    /// <param name="deflection">Allowable deflection, mm, 0.001 to 100.</param>
    /// <param name="pressure">Pressure, Pa, 1 to 1 000 000.</param>
    /// <returns>At most 20 times the side of a foot; null when even feet that almost touch, 1.12 times their side apart, are too
    /// far apart.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double? MaxFootSpacing(
        double footSide, double thickness, BoardProperties board, double deflection, double pressure = PlateFactors.Atmosphere)
    {
        ArgumentNullException.ThrowIfNull(board);
        Bound.Check(footSide, 1, 1000, "side of a foot", " mm");
        // Rounding makes a side over 20 times itself slightly less than a twentieth.
        bool Holds(double distance) =>
            PadPlate.ForPads(Math.Max(footSide / distance, 1 / MaxSides), board.PoissonRatio)
                .MaxSpan(thickness, board, deflection, pressure) >= distance;

        var (near, far) = (footSide * 1.12, footSide * MaxSides);
        if (Holds(far)) return far;
        if (!Holds(near)) return null;
        return IntervalHalving.Narrow(near, far, Holds, count: 30).Low;
    }
}
