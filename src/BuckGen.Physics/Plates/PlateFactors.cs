namespace BuckGen.Physics.Plates;

/// <summary>How far a board bends and how hard it is stressed.</summary>
/// <param name="Deflection">Greatest deflection, mm.</param>
/// <param name="Stress">Greatest bending stress, MPa.</param>
internal readonly record struct PlateResponse(double Deflection, double Stress);

/// <summary>What a thin plate of some shape and support does under even pressure q, for any size.</summary>
/// <remarks>
/// Deflection = factor·q·l⁴/D and moment = factor·q·l² a mm of width, with the stiffness D = E·h³/(12·(1 - ν²)) and the stress
/// 6·moment/h². Holds while the deflection is below about half the thickness and the span above about ten times it. Shorter spans
/// bend somewhat more than this says, through shear; but they bend little.
/// </remarks>
/// <param name="Deflection">Factor of the greatest deflection.</param>
/// <param name="Moment">Factor of the greatest moment, positive whichever way it bends.</param>
internal readonly record struct PlateFactors(double Deflection, double Moment)
{
    /// <summary>One standard atmosphere, Pa: the most that a vacuum can load a board with.</summary>
    public const double Atmosphere = 101_325;

    /// <summary>Deflection and stress of a plate of a given size.</summary>
    /// <param name="span">The length l the factors are for, mm, 1 to 10 000.</param>
    /// <param name="thickness">Thickness, mm, 0.2 to 100.</param>
    /// <param name="board">What it is made of.</param>
    /// <param name="pressure">Pressure, Pa, 0 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public PlateResponse ResponseTo(double span, double thickness, BoardProperties board, double pressure = Atmosphere)
    {
        Bound.Check(span, 1, 10_000, "span", " mm");
        var stiffness = FlexuralRigidity(thickness, board);
        Bound.Check(pressure, 0, 1e6, "pressure", " Pa");
        var load = pressure * 1e-6;
        return new(Deflection * load * Math.Pow(span, 4) / stiffness, 6 * Moment * load * span * span / (thickness * thickness));
    }

    /// <summary>The longest span, mm, that keeps within a deflection and the stress allowed for the board.</summary>
    /// <param name="thickness">Thickness, mm, 0.2 to 100.</param>
    /// <param name="board">What it is made of.</param>
    /// <param name="deflection">Deflection allowed, mm, 0.001 to 100.</param>
    /// <param name="pressure">Pressure, Pa, 1 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public double MaxSpan(double thickness, BoardProperties board, double deflection, double pressure = Atmosphere)
    {
        var stiffness = FlexuralRigidity(thickness, board);
        Bound.Check(deflection, 0.001, 100, "deflection allowed", " mm");
        Bound.Check(pressure, 1, 1e6, "pressure", " Pa");
        var load = pressure * 1e-6;
        var byDeflection = Math.Pow(deflection * stiffness / (Deflection * load), 0.25);
        var byStress = thickness * Math.Sqrt(board.AllowedStress / (6 * Moment * load));
        return Math.Min(byDeflection, byStress);
    }

    private static double FlexuralRigidity(double thickness, BoardProperties board)
    {
        ArgumentNullException.ThrowIfNull(board);
        Bound.Check(thickness, 0.2, 100, "thickness", " mm");
        board.Validate();
        return board.Modulus * Math.Pow(thickness, 3) / (12 * (1 - board.PoissonRatio * board.PoissonRatio));
    }
}
