using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Cutting.Boards;

/// <summary>What a board, or the machine's bed, holds of a part; and the finding about a part that it does not hold.</summary>
internal static class PlateRoom
{
    /// <summary>
    /// Maximum size of a part before the kerf is allowed for; null when the board is made as large as its parts need.
    /// </summary>
    public static Vec2? Find(Stock stock, CuttingSpec spec)
    {
        if (stock.SizeIsAssumed && spec.Bed is null) return null;
        var piece = stock.SizeIsAssumed ? spec.Bed! : MachineBed.Piece(stock, spec);
        var edge = 2 * (spec.EdgeMargin + spec.Compensation);
        return new(piece.Width - edge, piece.Height - edge);
    }

    /// <summary>One finding a stock; it names every part, since each is missing from the cut files.</summary>
    public static Finding TooLarge(
        CutPart part, ImmutableArray<string> all, RectangleSize piece, CuttingSpec spec, bool isPlate)
    {
        var others = all.Length == 1 ? "" : $" In all, {all.Length} parts fit on no board: {string.Join(", ", all)}.";
        return new("part-larger-than-stock", Severity.Error,
            FormattableString.Invariant($"Part {part.Name} needs {part.Bounds.Width:F1} x {part.Bounds.Height:F1} mm; ")
            + (spec.Bed is null ? "a board of " : "what the machine's bed holds of ") + part.Stock.Name
            + FormattableString.Invariant(
                $" is {piece.Width:0.##} x {piece.Height:0.##} mm with {spec.EdgeMargin:0.##} mm of margin, so the part ")
                + "does not fit on a board."
            + others,
            $"{(spec.Bed is null ? "Use a larger board" : "Cut it on a larger machine")}, or make the outline or the base "
            + (isPlate && spec.Seams is null ? "margin smaller; or add the table [seams] to the job, and it is cut in pieces."
                : "margin smaller."))
        {
            Place = part.Bounds.Centre,
            Value = Math.Max(part.Bounds.Width, part.Bounds.Height),
            Limit = Math.Max(piece.Width, piece.Height) - 2 * spec.EdgeMargin,
        };
    }
}
