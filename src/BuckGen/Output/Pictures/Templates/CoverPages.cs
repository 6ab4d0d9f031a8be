using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>
/// What comes before the pages of a template: the words, a square to check the size by, and the drawing in small with its pages.
/// </summary>
internal static class CoverPages
{
    private const double Side = 100;

    /// <summary>Room for the square and the map under the words, mm.</summary>
    private const double Foot = Side + 28;
    private const double TitleRoom = 16;

    private static readonly Ink SquareInk = new(PictureColours.Black, 0.25);

    public static IEnumerable<Picture> Draw(PaperTemplate template, TileGrid grid, Paper paper)
    {
        var (size, title) = (PaperSizes.Upright(paper), template.Drawing.Title);
        var page = new Bounds(0, 0, size.X, size.Y);
        var inner = page.Grown(-TileGrid.Margin);
        var lines = Words(template, grid).SelectMany(p => Wrapped(p, inner.Width)).ToImmutableArray();
        var onFirst = (int)((inner.Height - TitleRoom - Foot) / TextLines.Spacing);
        var first = lines.Take(onFirst).ToImmutableArray();
        var square = new Vec2(inner.MinX + 10, inner.MaxY - TitleRoom - first.Length * TextLines.Spacing - 6 - Side);
        yield return new(title, page,
        [
            new PictureText(new(inner.MinX, inner.MaxY - 6), title, Helvetica.HeightToFit(title, inner.Width, 6), TextAlign.Start,
                PictureColours.Black),
            .. TextLines.Set(first, new(inner.MinX, inner.MaxY - TitleRoom)),
            .. Square(square),
            .. KeyMap.Draw(template.Drawing, grid, new(square.X + Side + 10, square.Y, inner.MaxX, square.Y + Side)),
        ]);
        var onOthers = (int)(inner.Height / TextLines.Spacing);
        foreach (var rest in lines.Skip(onFirst).Chunk(onOthers))
            yield return new(title, page, [.. TextLines.Set(rest, new(inner.MinX, inner.MaxY - TextLines.Height))]);
    }

    private static IEnumerable<string> Words(PaperTemplate template, TileGrid grid)
    {
        yield return "Print at 100 %, without fitting to the page, and measure the square below before use: each side must "
            + "be 100 mm long.";
        if (grid.Rows * grid.Columns > 1)
            yield return FormattableString.Invariant(
                $"The drawing is spread over {grid.Rows * grid.Columns} pages, {TileGrid.Name(0, 0)} to {grid.Last}. Cut ")
                + "one of two neighbours along the dashed line, lay its crosses on the other's against the light, and "
                + "tape them together.";
        foreach (var paragraph in template.Words) yield return paragraph;
    }

    private static IEnumerable<PictureItem> Square(Vec2 corner)
    {
        yield return new PictureShape(
            [new(Loop.Rectangle(Bounds.FromCorners(corner, corner + new Vec2(Side, Side))).Segments, true)], SquareInk);
        yield return new PictureText(corner + new Vec2(Side / 2, Side / 2), "print at 100 %", TextLines.TitleHeight,
            TextAlign.Middle, PictureColours.Black);
        foreach (var item in Dimension.Level(corner - new Vec2(0, 6), corner + new Vec2(Side, -6), Side)) yield return item;
        foreach (var item in Dimension.Upright(corner - new Vec2(4, 0), corner + new Vec2(-4, Side), Side)) yield return item;
    }

    private static ImmutableArray<string> Wrapped(string paragraph, double width)
    {
        // As many letters as fit; a line of wide ones takes fewer.
        var letters = (int)(width / (0.45 * TextLines.Height));
        var lines = TextLines.Wrap(paragraph, letters);
        while (lines.Any(l => Helvetica.Width(l, TextLines.Height) > width)) lines = TextLines.Wrap(paragraph, --letters);
        return lines;
    }
}
