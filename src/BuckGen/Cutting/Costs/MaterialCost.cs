using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Forming;

namespace BuckGen.Cutting.Costs;

/// <summary>What one material of a job costs.</summary>
/// <param name="Name">The stock, or the plastic.</param>
/// <param name="Sheets">Whole sheets needed.</param>
/// <param name="Share">How much of them is used up, in sheets: the parts with the waste between them.</param>
/// <param name="SheetPrice">Price of a whole sheet; null when not given.</param>
internal sealed record MaterialCost(string Name, int Sheets, double Share, double? SheetPrice)
{
    /// <summary>Price of what is used up; null when the sheet's is not given.</summary>
    public double? ShareCost => SheetPrice * Share;

    /// <summary>Price of all whole sheets; null when the sheet's is not given.</summary>
    public double? WholeCost => SheetPrice * Sheets;

    /// <summary>The sheets that are cut, in the order in which they are laid out.</summary>
    internal static ImmutableArray<MaterialCost> Stock(CutPlan plan) =>
        [.. plan.Sheets.GroupBy(s => s.Stock.Name).Select(g => new MaterialCost(g.Key, WholeSheets(g), g.Sum(Used), g.First().Stock.Price))];

    /// <summary>
    /// The plastic: a blank of the first of the shop's sheets that holds one; null when no such sheet is known.
    /// </summary>
    internal static MaterialCost? Plastic(CutPlan plan)
    {
        if (plan.Design is not { Blank: { } blank, Spec.Sheet: { } sheet }) return null;
        var name = FormattableString.Invariant($"{sheet.Plastic?.Name ?? "plastic"} {blank.Gauge:0.##} mm");
        return blank.Yields.FirstOrDefault(y => y.Count > 0) is { } yield
            ? new(name, 1, 1.0 / yield.Count, Price(sheet.PricePerSquareMetre, yield))
            : null;
    }

    private static double? Price(double? perSquareMetre, BlankYield yield) => perSquareMetre * yield.Sheet.Width * yield.Sheet.Height / 1e6;

    /// <summary>Sheets are bought whole; several pieces that fit the machine's bed come from one.</summary>
    private static int WholeSheets(IEnumerable<SheetLayout> sheets)
    {
        var all = sheets.ToArray();
        return (int)Math.Ceiling((double)all.Length / all[0].PiecesPerSheet);
    }

    /// <summary>The box round the parts of a sheet, over the whole sheet's area.</summary>
    private static double Used(SheetLayout sheet)
    {
        var box = sheet.Placements.Aggregate(Geometry.Bounds.Nothing, (b, p) => b.With(p.Bounds));
        return box.Width * box.Height / (sheet.Stock.SheetWidth * sheet.Stock.SheetHeight);
    }
}
