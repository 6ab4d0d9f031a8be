using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>
/// The strip under a page's drawing: which page it is, of what, where it lies among the others, and a line to check the size by.
/// </summary>
internal static class TileStrip
{
    private const double LabelRoom = 36;
    private const double CheckLength = 100;
    private const double MapWidth = 46;
    private const double MapHeight = 14;

    private static readonly Ink Rule = new(PictureColours.Grey, 0.13);
    private static readonly Ink CheckInk = new(PictureColours.Black, 0.25);
    private static readonly Ink Cell = new(PictureColours.Grey, 0.18);
    private static readonly Ink ThisCell = new(PictureColours.Grey, 0.18, PictureColours.Black);

    public static IEnumerable<PictureItem> Draw(string title, TileGrid grid, int row, int column)
    {
        var view = grid.Window(row, column);
        var corner = new Vec2(view.MinX, view.MinY - TileGrid.Strip);
        var label = $"{TileGrid.Name(row, column)} of {grid.Last}";
        var line = corner + new Vec2(LabelRoom, 2);
        yield return PictureShape.Line(new(view.MinX, view.MinY - 1.5), new(view.MaxX, view.MinY - 1.5), Rule);
        yield return new PictureText(corner + new Vec2(0, 5), label, Helvetica.HeightToFit(label, LabelRoom - 6, 7),
            TextAlign.Start, PictureColours.Black);
        yield return new PictureText(line + new Vec2(1, 9.2), title, Helvetica.HeightToFit(title, CheckLength, TextLines.Height),
            TextAlign.Start, PictureColours.Black);
        yield return new PictureText(line + new Vec2(1, 2), "100 mm: print at 100 %, without fitting to the page",
            TextLines.Height, TextAlign.Start, PictureColours.Black);
        yield return PictureShape.Line(line, line + new Vec2(CheckLength, 0), CheckInk);
        foreach (var end in (Vec2[])[line, line + new Vec2(CheckLength, 0)])
            yield return PictureShape.Line(end - new Vec2(0, 1.5), end + new Vec2(0, 1.5), CheckInk);
        if (grid.Rows * grid.Columns == 1) yield break;
        foreach (var cell in Map(new(view.MaxX, corner.Y + 0.5), grid, row, column)) yield return cell;
    }

    /// <summary>The grid of pages in small, this page dark.</summary>
    private static IEnumerable<PictureItem> Map(Vec2 lowerRight, TileGrid grid, int row, int column)
    {
        var scale = Math.Min(MapWidth / (grid.Columns * grid.Step.X), MapHeight / (grid.Rows * grid.Step.Y));
        var (width, height) = (grid.Step.X * scale, grid.Step.Y * scale);
        var corner = lowerRight - new Vec2(grid.Columns * width, 0);
        var (across, up) = (new Vec2(grid.Columns * width, 0), new Vec2(0, grid.Rows * height));
        // Lines right through, since a rectangle for each page on each page would be their number squared.
        for (var c = 0; c <= grid.Columns; c++) yield return Line(corner + new Vec2(c * width, 0), up);
        for (var r = 0; r <= grid.Rows; r++) yield return Line(corner + new Vec2(0, r * height), across);
        var cell = corner + new Vec2(column * width, (grid.Rows - 1 - row) * height);
        yield return new PictureShape(
            [new(Loop.Rectangle(Bounds.FromCorners(cell, cell + new Vec2(width, height))).Segments, true)], ThisCell);

        static PictureShape Line(Vec2 from, Vec2 along) => PictureShape.Line(from, from + along, Cell);
    }
}
