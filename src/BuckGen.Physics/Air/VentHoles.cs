namespace BuckGen.Physics.Air;

/// <summary>A number of equal holes.</summary>
/// <param name="Diameter">Bore at the surface, mm, 0.05 to 100. A wider relief bore below it is not counted: it holds back next
/// to nothing.</param>
/// <param name="Length">Length of that bore, mm, 0 to 1000.</param>
/// <param name="Count">How many, 0 to 1 000 000.</param>
internal sealed record VentHoles(double Diameter, double Length, int Count)
{
    /// <summary>More holes of one kind than this are a slip of the pen.</summary>
    public const int MaxCount = 1_000_000;

    internal void Validate()
    {
        Bound.Check(Diameter, 0.05, 100, "diameter of the vents", " mm");
        Bound.Check(Length, 0, 1000, "length of the vents", " mm");
        Bound.Check(Count, 0, MaxCount, "number of vents");
    }
}
