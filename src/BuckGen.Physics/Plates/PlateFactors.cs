namespace BuckGen.Physics.Plates;

/// <summary>Deflection and stress of a board under pressure.</summary>
/// <param name="Deflection">Largest deflection, mm.</param>
/// <param name="Stress">Largest bending stress, MPa.</param>
public readonly record struct PlateResponse(double Deflection, double Stress);

/// <summary>
/// Factors of the deflection and the moment of a thin plate under uniform pressure q, for a given shape and support and any size.
/// </summary>
/// <remarks>
/// Kirchhoff plate theory: deflection = factor·q·l⁴/D, moment per length = factor·q·l². Here the span is l, the flexural rigidity
/// D = E·h³/(12·(1 - ν²)) and the stress 6·moment/h² (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells). Valid while
/// the deflection is below about half the thickness and the span above about ten times the thickness. At shorter spans shear adds
/// to the deflection, but there it is small.
/// </remarks>
/// <param name="Deflection">Factor of the largest deflection.</param>
/// <param name="Moment">Factor of the largest moment, positive for both directions of bending.</param>
public readonly record struct PlateFactors(double Deflection, double Moment)
{
    /// <summary>One standard atmosphere, Pa: the largest pressure that a vacuum can exert on a board.</summary>
    public const double Atmosphere = 101_325;

    /// <summary>Deflection and stress of a plate of a given size.</summary>
    /// <param name="span">Span that the factors refer to, mm, 1 to 10 000.</param>
    /// <param name="thickness">Thickness, mm, 0.2 to 100.</param>
    /// <param name="board">Elastic properties of the board.</param>
    /// <param name="pressure">Pressure, Pa, 0 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public PlateResponse ResponseTo(double span, double thickness, BoardProperties board, double pressure = Atmosphere)
    {
        Bound.Check(span, 1, 10_000, "span", " mm");
        var stiffness = FlexuralRigidity(thickness, board);
        Bound.Check(pressure, 0, 1e6, "pressure", " Pa");
        var load = pressure * 1e-6;
        return new(Deflection * load * Math.Pow(span, 4) / stiffness, 6 * Moment * load * span * span / (thickness * thickness));
    }

    /// <summary>The largest span, mm, that keeps to a deflection and to the allowable stress of the board.</summary>
    /// <param name="thickness">Thickness, mm, 0.2 to 100.</param>
    /// <param name="board">Elastic properties and strength of the board.</param>
    /// <param name="deflection">Allowable deflection, mm, 0.001 to 100.</param>
    /// <param name="pressure">Pressure, Pa, 1 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
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
