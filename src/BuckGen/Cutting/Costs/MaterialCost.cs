using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Forming;

namespace BuckGen.Cutting.Costs;

/// <summary>What one material of a job costs.</summary>
/// <param name="Name">The stock, or the plastic.</param>
/// <param name="Unit">What it is bought in: "board" or "sheet".</param>
/// <param name="Count">How many of them are needed, whole.</param>
/// <param name="Share">How much of them is used up, in boards or sheets: the parts with the waste between them.</param>
/// <param name="UnitPrice">Price of a whole board or sheet; null when not given.</param>
internal sealed record MaterialCost(string Name, string Unit, int Count, double Share, double? UnitPrice)
{
    /// <summary>Price of what is used up; null when the unit's is not given.</summary>
    public double? ShareCost => UnitPrice * Share;

    /// <summary>Price when all are bought whole; null when the unit's is not given.</summary>
    public double? WholeCost => UnitPrice * Count;

    /// <summary>The stocks that are cut, in the order in which they are laid out.</summary>
    internal static ImmutableArray<MaterialCost> Stock(CutPlan plan) =>
        [.. plan.AllBoards.GroupBy(b => b.Stock.Name)
            .Select(g => new MaterialCost(g.Key, "board", WholeBoards(g), g.Sum(Used), g.First().Stock.Price))];

    /// <summary>
    /// The plastic: a blank of the first of the shop's sheets that holds one; null when no such sheet is known.
    /// </summary>
    internal static MaterialCost? Plastic(CutPlan plan)
    {
        var ofGroups = plan.Groups.Select(Plastic).OfType<MaterialCost>().ToArray();
        if (ofGroups.Length > 0)
        {
            // A sheet is bought for as many blanks as it gives.
            var share = ofGroups.Sum(p => p.Share);
            return ofGroups[0] with { Count = (int)Math.Ceiling(share - 1e-9), Share = share };
        }

        if (plan.Design is not { Blank: { } blank, Spec.Sheet: { } sheet }) return null;
        var name = FormattableString.Invariant($"{sheet.Plastic?.Name ?? "plastic"} {blank.Gauge:0.##} mm");
        return blank.Yields.FirstOrDefault(y => y.Count > 0) is { } yield
            ? new(name, "sheet", 1, 1.0 / yield.Count, Price(sheet.PricePerSquareMetre, yield))
            : null;
    }

    private static double? Price(double? perSquareMetre, BlankYield yield) =>
        perSquareMetre * yield.Sheet.Width * yield.Sheet.Height / 1e6;

    /// <summary>Boards are bought whole; several pieces that fit the machine's bed come from one.</summary>
    private static int WholeBoards(IEnumerable<BoardLayout> boards)
    {
        var all = boards.ToArray();
        return (int)Math.Ceiling((double)all.Length / all[0].PiecesPerBoard);
    }

    /// <summary>The box round the parts of a board, over the whole board's area.</summary>
    private static double Used(BoardLayout board)
    {
        var box = board.Placements.Aggregate(Geometry.Bounds.Nothing, (b, p) => b.With(p.Bounds));
        return box.Width * box.Height / (board.Stock.BoardWidth * board.Stock.BoardHeight);
    }
}
