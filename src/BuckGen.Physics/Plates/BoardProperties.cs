namespace BuckGen.Physics.Plates;

/// <summary>Elastic properties and strength of a board in bending.</summary>
/// <param name="Name">Name of the board.</param>
/// <param name="Modulus">Modulus of elasticity in bending, MPa, 100 to 300 000.</param>
/// <param name="Strength">Bending strength, MPa, 1 to 2000.</param>
/// <param name="Source">Source of the two numbers.</param>
public sealed record BoardProperties(string Name, double Modulus, double Strength, string Source)
{
    /// <summary>
    /// Poisson's ratio, 0 to 0.49. The default of 0.3 for wood-based boards is from memory; its influence is small.
    /// </summary>
    public double PoissonRatio { get; init; } = 0.3;

    /// <summary>Bending strength over the allowable stress, 1 to 20.</summary>
    /// <remarks>
    /// 3 covers many load cycles, damp or warm boards and the holes through them (our choice, no source). Board standards give
    /// factory test values, and EN 622-5 itself states that its values are not for design.
    /// </remarks>
    public double SafetyFactor { get; init; } = 3;

    /// <summary>Allowable stress, MPa.</summary>
    public double AllowedStress => Strength / SafetyFactor;

    /// <summary>MDF for dry use.</summary>
    /// <param name="thickness">Thickness, mm, 2.5 to 45.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is out of range.</exception>
    public static BoardProperties Mdf(double thickness)
    {
        Bound.Check(thickness, 2.5, 45, "thickness of the MDF", " mm");
        var (modulus, strength) = thickness switch
        {
            <= 9 => (2700, 23),
            <= 12 => (2500, 22),
            <= 19 => (2200, 20),
            <= 30 => (2100, 18),
            _ => (1900, 17),
        };
        return new("MDF", modulus, strength,
            "EN 622-5, type MDF, minimum mean values, as a maker's data sheet gives them above 6 mm; below 6 mm from memory.");
    }

    /// <summary>Birch plywood of 1.4 mm plies, bent across the grain of its face plies, its weaker direction.</summary>
    /// <param name="thickness">Thickness, mm, 3.5 to 50. The values of the next thinner board in the table are used.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is out of range.</exception>
    public static BoardProperties BirchPlywood(double thickness)
    {
        Bound.Check(thickness, 3.5, 50, "thickness of the birch plywood", " mm");
        var (modulus, strength) = thickness switch
        {
            < 6.1 => (1029, 10.6),
            < 8.8 => (4763, 29.0),
            < 11.5 => (6105, 32.1),
            < 14.3 => (6781, 33.2),
            _ => (7184, 33.8),
        };
        return new("birch plywood", modulus, strength,
            "Handbook of Finnish Plywood, mean modulus and characteristic strength to EN 789 and EN 1058, from memory. Both "
            + "agree with plies of 17 500 MPa and 70 MPa along the grain and nothing across it.");
    }

    internal void Validate()
    {
        Bound.Check(Modulus, 100, 300_000, "modulus of elasticity", " MPa");
        Bound.Check(Strength, 1, 2000, "bending strength", " MPa");
        Bound.Check(PoissonRatio, 0, 0.49, "Poisson's ratio");
        Bound.Check(SafetyFactor, 1, 20, "safety factor");
    }
}
