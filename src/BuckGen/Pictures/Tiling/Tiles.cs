using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Pictures.Pdf;

namespace BuckGen.Pictures.Tiling;

/// <summary>A drawing in real size cut over pages of office paper: first a cover, then the pages row by row.</summary>
internal static class Tiles
{
    /// <summary>The pages. Those after the cover keep the drawing's own coordinates.</summary>
    public static ImmutableArray<Picture> Of(PaperTemplate template, Paper paper)
    {
        var (drawing, grid) = (template.Drawing, TileGrid.Over(template.Drawing.Page, paper));
        return
        [
            .. CoverPages.Of(template, grid, paper),
            .. from row in Enumerable.Range(0, grid.Rows) from column in Enumerable.Range(0, grid.Columns) select Page(drawing, grid, row, column),
        ];
    }

    private static Picture Page(Picture drawing, TileGrid grid, int row, int column)
    {
        var view = grid.Window(row, column);
        var edge = view.Grown(TileGrid.Margin);
        return new($"{drawing.Title}, {TileGrid.Name(row, column)}", edge with { MinY = edge.MinY - TileGrid.Strip },
        [
            new PictureWindow(view, [.. drawing.Items.Where(i => Shows(i, view, grid))]),
            .. SeamMarks.Of(grid, view),
            .. TileStrip.Of(drawing.Title, grid, row, column),
        ]);
    }

    private static bool Shows(PictureItem item, Bounds view, TileGrid grid) => item switch
    {
        PictureShape { Ink.Fill: null } shape => shape.Paths.SelectMany(p => p.Segments).Any(s => s.Bounds.Grown(shape.Ink.Width / 2).Meets(view)),
        PictureShape shape => shape.Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds)).Grown(shape.Ink.Width / 2).Meets(view),
        PictureText text => Shows(Room(text), view, grid),
        _ => true,
    };

    /// <summary>Words that some page shows whole are left out where they would be cut.</summary>
    private static bool Shows(Bounds text, Bounds view, TileGrid grid) => view.Contains(text) || view.Meets(text) && !(
        from row in Enumerable.Range(0, grid.Rows) from column in Enumerable.Range(0, grid.Columns) select grid.Window(row, column)).Any(w => w.Contains(text));

    /// <summary>Room of a text: from a quarter of its body under the base line to its height above it.</summary>
    private static Bounds Room(PictureText text)
    {
        var along = new Vec2(1, 0).Turned(text.Turn * Math.PI / 180);
        var width = Helvetica.Width(text.Text, text.Height);
        var start = text.Place - along * (text.Align switch { TextAlign.Middle => width / 2, TextAlign.End => width, _ => 0 });
        var (low, high) = (along.Left * (-0.25 * text.Height), along.Left * text.Height);
        return Bounds.Of(start + low, start + high).With(Bounds.Of(start + along * width + low, start + along * width + high));
    }
}
