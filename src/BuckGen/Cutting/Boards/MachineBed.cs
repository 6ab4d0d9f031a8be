using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Cutting.Boards;

/// <summary>How much of a board the machine's bed holds.</summary>
internal static class MachineBed
{
    /// <summary>The whole board where it fits, turned or not; else the larger of the pieces that fit lying either way.</summary>
    public static RectangleSize Piece(Stock stock, CuttingSpec spec)
    {
        var board = new RectangleSize(stock.BoardWidth, stock.BoardHeight);
        if (spec.Bed is not { } bed) return board;
        RectangleSize[] pieces = [Smaller(board, bed.Width, bed.Height), Smaller(board, bed.Height, bed.Width)];
        return pieces[1].Width * pieces[1].Height > pieces[0].Width * pieces[0].Height ? pieces[1] : pieces[0];
    }

    /// <summary>What to know when the board must be cut up first; null when it need not.</summary>
    public static Finding? Finding(Stock stock, RectangleSize piece, CuttingSpec spec) =>
        piece.Width == stock.BoardWidth && piece.Height == stock.BoardHeight
            ? null
            : new("board-larger-than-bed", Severity.Note,
                FormattableString.Invariant(
                    $"A board of {stock.Name} is {stock.BoardWidth:0.##} x {stock.BoardHeight:0.##} mm, the machine's bed ")
                    + FormattableString.Invariant($"{spec.Bed!.Width:0.##} x {spec.Bed.Height:0.##} mm."),
                FormattableString.Invariant($"Cut the board into pieces of {piece.Width:0.##} x {piece.Height:0.##} mm first."))
            {
                Value = Math.Max(stock.BoardWidth, stock.BoardHeight),
                Limit = Math.Max(spec.Bed.Width, spec.Bed.Height),
            };

    private static RectangleSize Smaller(RectangleSize board, double width, double height) =>
        new(Math.Min(board.Width, width), Math.Min(board.Height, height));
}
