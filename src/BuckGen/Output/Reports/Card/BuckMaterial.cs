using BuckGen.Design;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics.Heat;

namespace BuckGen.Output.Reports.Card;

/// <summary>How well the boards of a buck take up heat, as far as it is known.</summary>
/// <param name="Conductivity">Thermal conductivity through the board, W/(m·K).</param>
/// <param name="Density">Density, kg/m³.</param>
/// <param name="HeatCapacity">Heat capacity, J/(kg·K).</param>
internal sealed record BuckMaterial(FigureRange Conductivity, FigureRange Density, FigureRange HeatCapacity)
{
    /// <summary>Where <see cref="Wood"/> is known from.</summary>
    public const string WoodSource =
        "Forest Products Laboratory, Wood Handbook; ISO 10456, softwood to heavy fibreboard (from memory)";

    /// <summary>Boards that the catalog does not know: softwood to heavy fibreboard, up to 12 % of moisture.</summary>
    public static BuckMaterial Wood { get; } = new(new(0.1, 0.18), new(400, 880), new(1200, 1700));

    /// <summary>What the boards of a buck have together: from the minimum of all to the maximum of all.</summary>
    /// <param name="design">The buck.</param>
    public static BuckMaterial Find(BuckDesign design) => design.Layers.Select(l => Find(l.Stock.Material)).Distinct()
        .Aggregate((a, b) => new(Both(a.Conductivity, b.Conductivity), Both(a.Density, b.Density),
            Both(a.HeatCapacity, b.HeatCapacity)));

    /// <summary>The material that takes up heat quickest, or slowest, of those in the ranges.</summary>
    /// <param name="quick">True for the quickest.</param>
    public SheetMaterial At(bool quick) => quick
        ? new(Conductivity.High, Density.High, HeatCapacity.High)
        : new(Conductivity.Low, Density.Low, HeatCapacity.Low);

    private static BuckMaterial Find(CatalogStock? stock) => new(
        stock?.Conductivity ?? Wood.Conductivity, stock?.Density ?? Wood.Density, stock?.HeatCapacity ?? Wood.HeatCapacity);

    private static FigureRange Both(FigureRange a, FigureRange b) => new(Math.Min(a.Low, b.Low), Math.Max(a.High, b.High));
}
