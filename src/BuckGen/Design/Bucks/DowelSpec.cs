namespace BuckGen.Design.Bucks;

/// <summary>Dowels that hold the layers in place while they are glued.</summary>
/// <param name="Diameter">Diameter of the dowel, mm.</param>
/// <param name="Fit">How much wider the hole is than the dowel, mm. 0.1 to 0.2 is common practice (no source).</param>
/// <param name="Wall">Least wood between a hole and any edge, mm.</param>
public sealed record DowelSpec(double Diameter = 6, double Fit = 0.15, double Wall = 4)
{
    /// <summary>
    /// True for holes in pieces on which nothing lies too: the sheet would show them, unless they are filled. Without them such a
    /// piece is glued on by the glue-up line of the layer below.
    /// </summary>
    public bool ThroughFace { get; init; }

    /// <summary>Diameter of the hole, mm.</summary>
    public double HoleDiameter => Diameter + Fit;
}
