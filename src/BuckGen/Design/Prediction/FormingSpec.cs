using BuckGen.Design.Bucks;

namespace BuckGen.Design.Prediction;

/// <summary>How closely the forming of the sheet is followed.</summary>
public enum FormingDetail
{
    /// <summary>In about a second.</summary>
    Quick,

    /// <summary>
    /// With seven times as many triangles, in several seconds; compared with the quick answer to show how far off that one is.
    /// </summary>
    Fine,
}

/// <summary>How the forming of the sheet is computed.</summary>
public sealed record FormingSpec
{
    /// <summary>Quick or fine.</summary>
    public FormingDetail Detail { get; init; }

    /// <summary>True for the layers with their steps, false for the wall after they are sanded or filled.</summary>
    public bool Stepped { get; init; }

    /// <summary>
    /// Shear modulus of the hot sheet, MPa, 0.001 to 10. It decides how small a corner the vacuum fills, and little else. With
    /// 0.1 that is about one and a half gauges, common practice, no source; solid plastics just above softening have two or three
    /// times as much (0.2 polystyrene, 0.3 acrylic: Ferry, Viscoelastic Properties of Polymers, from memory), hotter ones less.
    /// </summary>
    public double Modulus { get; init; } = 0.1;

    /// <summary>
    /// How much the sheet stiffens when it is drawn in both directions: the ratio of the two constants of Mooney and Rivlin, 0 to
    /// 10. With 0.1 a bubble takes ever more pressure, as hot sheet does; 0 is the neo-Hookean material. Common practice, no
    /// source.
    /// </summary>
    public double Stiffening { get; init; } = 0.1;

    /// <summary>
    /// Coefficient of friction between hot sheet and wood, 0 to 10; null, as usual, for a sheet that sticks where it touches.
    /// Only a polished, warm or greased buck lets the sheet slide (common practice, no source).
    /// </summary>
    public double? Friction { get; init; }

    /// <summary>
    /// The thinnest place is searched where a ball of this radius can touch the part from the sheet's side, mm, 0.5 to 50: deeper
    /// in a sharp inside corner a wall has no least thickness, it only depends on how fine the net is. A coarse net takes a
    /// larger ball, twice as large as its triangles, and says so.
    /// </summary>
    public double CornerBall { get; init; } = 2;

    internal void Validate()
    {
        BuckSpec.Require(Modulus is >= 0.001 and <= 10, "stiffness of the hot sheet", Modulus, " MPa", "from 0.001 to 10 MPa");
        BuckSpec.Require(Stiffening is >= 0 and <= 10, "stiffening of the hot sheet", Stiffening, "", "from 0 to 10");
        if (Friction is { } friction) BuckSpec.Require(friction is >= 0 and <= 10, "friction between sheet and buck", friction, "", "from 0 to 10");
        BuckSpec.Require(CornerBall is >= 0.5 and <= 50, "ball for inside corners", CornerBall, " mm", "from 0.5 to 50 mm");
    }
}
