using System.Collections.Immutable;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>A drawing at full size cut over pages of office paper: first a cover, then the pages row by row.</summary>
internal static class Tiles
{
    /// <summary>Pages over which a drawing is spread at most: some 20 m² of A4.</summary>
    public const int MaxPages = 500;

    /// <summary>How many pages a drawing is spread over, its cover not counted.</summary>
    public static long Count(PaperTemplate template, Paper paper) => TileGrid.Over(template.Drawing.Page, paper).Count;

    /// <summary>The pages. Those after the cover keep the drawing's own coordinates.</summary>
    public static ImmutableArray<Picture> Split(PaperTemplate template, Paper paper)
    {
        var (drawing, grid) = (template.Drawing, TileGrid.Over(template.Drawing.Page, paper));
        var shown = TileItems.Split(drawing.Items, grid);
        return [.. CoverPages.Draw(template, grid, paper),
            .. shown.Select((items, number) => Page(drawing.Title, items, grid, number))];
    }

    private static Picture Page(string title, IReadOnlyList<PictureItem> items, TileGrid grid, int number)
    {
        var view = grid.Window(number);
        var edge = view.Grown(TileGrid.Margin);
        var (row, column) = (number / grid.Columns, number % grid.Columns);
        return new($"{title}, {TileGrid.Name(row, column)}", edge with { MinY = edge.MinY - TileGrid.Strip },
        [
            new PictureWindow(view, [.. items]),
            .. SeamMarks.Draw(grid, view),
            .. TileStrip.Draw(title, grid, row, column),
        ]);
    }
}
