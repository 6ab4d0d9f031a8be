namespace BuckGen.Design.Prediction;

/// <summary>How fine the mesh of the simulation is.</summary>
public enum FormingDetail
{
    /// <summary>Takes about a second.</summary>
    Quick,

    /// <summary>
    /// Twice as many triangles across every gap, seven times as many elsewhere; takes several seconds. The quick mesh is computed
    /// too, to show how far the thinnest wall depends on the mesh.
    /// </summary>
    Fine,
}

/// <summary>The settings of the simulation of forming.</summary>
public sealed record FormingSpec
{
    /// <summary>Quick or fine mesh.</summary>
    public FormingDetail Detail { get; init; } = FormingSettings.Detail.Default;

    /// <summary>True to form over the layers with their steps, false to form over the wall after sanding or filling.</summary>
    public bool Stepped { get; init; } = FormingSettings.Stepped.Default;

    /// <summary>
    /// Shear modulus of the hot sheet, MPa, 0.001 to 10; null, the usual case, for the range of the plastic. It determines how
    /// round inside corners stay and whether counters fill, and so how thin the sheet gets in them. Flat and outer places hardly
    /// depend on it.
    /// </summary>
    public double? Modulus { get; init; }

    /// <summary>
    /// Stiffening of the sheet under biaxial stretch: the ratio C2/C1 of the Mooney-Rivlin constants, 0 to 10. At 0.1 the
    /// pressure of a bubble rises all the way, as that of hot sheet does; 0 is the neo-Hookean material. Common practice, no
    /// source.
    /// </summary>
    public double Stiffening { get; init; } = FormingSettings.Stiffening.Value;

    /// <summary>
    /// Coulomb friction coefficient between hot sheet and wood, 0 to 10; null, the usual case, for a sheet that sticks where it
    /// touches. Only a polished, warm or greased buck lets the sheet slide (common practice, no source).
    /// </summary>
    public double? Friction { get; init; }

    /// <summary>
    /// Sag of the middle of the hot sheet below its frame before forming, mm, 0 to 500. A sagged sheet is thinner in the middle.
    /// </summary>
    public double Sag { get; init; } = FormingSettings.Sag.Value;

    /// <summary>
    /// Modulus at the frame over that in the middle, 1 to 20: what the frame keeps colder is stiffer. It falls evenly over
    /// <see cref="EdgeWidth"/>.
    /// </summary>
    public double EdgeStiffness { get; init; } = FormingSettings.EdgeStiffness.Value;

    /// <summary>How far in from the frame the sheet is colder, mm, 1 to 500.</summary>
    public double EdgeWidth { get; init; } = FormingSettings.EdgeWidth.Value;

    /// <summary>True to compute what each uncertain input does to the thinnest wall.</summary>
    public bool CompareInputs { get; init; } = FormingSettings.CompareInputs.Default;

    /// <summary>
    /// The thinnest place is searched where a ball of this radius can touch the part from the side of the sheet, mm, 0.5 to 50.
    /// Deeper in a sharp inside corner the wall has no minimum thickness; it depends only on how fine the mesh is. In a gap the
    /// ball is never larger than a quarter of its width; at walls with room before them it is at least twice as large as the
    /// triangles. The result names its radius.
    /// </summary>
    public double CornerBall { get; init; } = FormingSettings.CornerBall.Value;

    internal void Validate()
    {
        FormingSettings.Modulus.Require(Modulus);
        FormingSettings.Stiffening.Require(Stiffening);
        FormingSettings.Friction.Require(Friction);
        FormingSettings.Sag.Require(Sag);
        FormingSettings.EdgeStiffness.Require(EdgeStiffness);
        FormingSettings.EdgeWidth.Require(EdgeWidth);
        FormingSettings.CornerBall.Require(CornerBall);
    }
}
