namespace BuckGen.Physics.Air;

/// <summary>A group of equal holes.</summary>
/// <param name="Diameter">Diameter of the bore at the surface, mm, 0.05 to 100. A wider relief bore below it is neglected: its
/// resistance is very small.</param>
/// <param name="Length">Length of that bore, mm, 0 to 1000.</param>
/// <param name="Count">Number of holes, 0 to <see cref="MaxCount"/>.</param>
public sealed record VentHoles(double Diameter, double Length, int Count)
{
    /// <summary>Largest number of holes; more are taken for a mistake in the input.</summary>
    public const int MaxCount = 1_000_000;

    internal void Validate()
    {
        Bound.Check(Diameter, 0.05, 100, "diameter of the vents", " mm");
        Bound.Check(Length, 0, 1000, "length of the vents", " mm");
        Bound.Check(Count, 0, MaxCount, "number of vents");
    }
}
