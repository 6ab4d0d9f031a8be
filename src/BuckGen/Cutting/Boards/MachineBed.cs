using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Cutting.Boards;

/// <summary>How much of a sheet the machine's bed holds.</summary>
internal static class MachineBed
{
    /// <summary>The whole sheet where it fits, turned or not; else the larger of the pieces that fit lying either way.</summary>
    public static SheetSize Piece(Stock stock, CuttingSpec spec)
    {
        var sheet = new SheetSize(stock.SheetWidth, stock.SheetHeight);
        if (spec.Bed is not { } bed) return sheet;
        SheetSize[] pieces = [Smaller(sheet, bed.Width, bed.Height), Smaller(sheet, bed.Height, bed.Width)];
        return pieces[1].Width * pieces[1].Height > pieces[0].Width * pieces[0].Height ? pieces[1] : pieces[0];
    }

    /// <summary>What to know when the sheet must be cut up first; null when it need not.</summary>
    public static Finding? Finding(Stock stock, SheetSize piece, CuttingSpec spec) =>
        piece.Width == stock.SheetWidth && piece.Height == stock.SheetHeight
            ? null
            : new("sheet-larger-than-bed", Severity.Note,
                FormattableString.Invariant($"A sheet of {stock.Name} is {stock.SheetWidth:0.##} x {stock.SheetHeight:0.##} mm, the machine's bed {spec.Bed!.Width:0.##} x {spec.Bed.Height:0.##} mm."),
                FormattableString.Invariant($"Cut the sheet into pieces of {piece.Width:0.##} x {piece.Height:0.##} mm first."))
            {
                Value = Math.Max(stock.SheetWidth, stock.SheetHeight), Limit = Math.Max(spec.Bed.Width, spec.Bed.Height),
            };

    private static SheetSize Smaller(SheetSize sheet, double width, double height) => new(Math.Min(sheet.Width, width), Math.Min(sheet.Height, height));
}
