namespace BuckGen.Physics.Membranes;

/// <summary>
/// An incompressible hyperelastic material, after M. Mooney (J. Appl. Phys. 11 (1940) 582) and R. S. Rivlin: the strain energy
/// per volume is C1·(I1 - 3) + C2·(I2 - 3), with the invariants of the Cauchy-Green tensor. With C2 = 0 it is neo-Hookean.
/// </summary>
/// <remarks>
/// The shear modulus is 2·(C1 + C2). While the sheet is free, its shape at a given volume depends on C2/C1 only. The modulus
/// determines the pressure for it, and so the smallest corner that the pressure fills.
/// </remarks>
/// <param name="C1">First constant, MPa, above 0 to 1000.</param>
/// <param name="C2">Second constant, MPa, 0 to 1000.</param>
public sealed record HyperelasticMaterial(double C1, double C2 = 0)
{
    /// <summary>Initial shear modulus, MPa.</summary>
    public double ShearModulus => 2 * (C1 + C2);

    /// <summary>A neo-Hookean material.</summary>
    /// <param name="shearModulus">Initial shear modulus, MPa, above 0 to 2000.</param>
    public static HyperelasticMaterial NeoHookean(double shearModulus) => new(shearModulus / 2);

    /// <summary>A Mooney-Rivlin material.</summary>
    /// <param name="shearModulus">Initial shear modulus, MPa, above 0 to 2000.</param>
    /// <param name="ratio">C2/C1, 0 to 10.</param>
    public static HyperelasticMaterial MooneyRivlin(double shearModulus, double ratio) =>
        new(shearModulus / 2 / (1 + ratio), shearModulus / 2 / (1 + ratio) * ratio);

    internal void Validate()
    {
        Bound.Check(C1, 1e-9, 1000, "first constant of the material", " MPa");
        Bound.Check(C2, 0, 1000, "second constant of the material", " MPa");
    }
}
