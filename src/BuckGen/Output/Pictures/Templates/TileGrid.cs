using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>
/// How a drawing at full size is cut over pages: rows from the top, columns from the left, each overlapping the next.
/// </summary>
/// <param name="Rows">Rows of pages.</param>
/// <param name="Columns">Columns of pages.</param>
/// <param name="View">Width and height of what a page shows, mm.</param>
/// <param name="Corner">The upper left corner of all, in the drawing's coordinates.</param>
internal sealed record TileGrid(int Rows, int Columns, Vec2 View, Vec2 Corner)
{
    /// <summary>Left free at the edges of the paper, since printers don't reach them, mm; common practice, no source.</summary>
    public const double Margin = 10;

    /// <summary>What two neighbours both show, mm: room to glue.</summary>
    public const double Overlap = 10;

    /// <summary>Height of the strip under the drawing that says which page it is, mm.</summary>
    public const double Strip = 18;

    /// <summary>From one page to the next, mm.</summary>
    public Vec2 Step => View - new Vec2(Overlap, Overlap);

    /// <summary>How many pages there are; their numbers run from 0, row by row.</summary>
    public long Count => (long)Rows * Columns;

    /// <summary>The last page's name.</summary>
    public string Last => Name(Rows - 1, Columns - 1);

    /// <summary>The grid over a drawing; the paper upright or lying, whichever needs fewer pages.</summary>
    public static TileGrid Over(Bounds drawing, Paper paper)
    {
        var size = PaperSizes.Upright(paper);
        var (upright, lying) = (Over(drawing, size), Over(drawing, new Vec2(size.Y, size.X)));
        return lying.Count < upright.Count ? lying : upright;
    }

    /// <summary>A page's name: "B2" is in the second row and the second column.</summary>
    public static string Name(int row, int column) => FormattableString.Invariant($"{IslandLetters.Letter(row)}{column + 1}");

    /// <summary>What a page shows of the drawing.</summary>
    public Bounds Window(int row, int column)
    {
        var (left, top) = (Corner.X + column * Step.X, Corner.Y - row * Step.Y);
        return new(left, top - View.Y, left + View.X, top);
    }

    /// <summary>What a page shows of the drawing.</summary>
    /// <param name="number">Its number.</param>
    public Bounds Window(int number) => Window(number / Columns, number % Columns);

    /// <summary>Numbers of the pages that show something of the bounds, in order.</summary>
    public IEnumerable<int> Showing(Bounds bounds)
    {
        var (left, right) = (Whole((bounds.MinX - Corner.X - View.X) / Step.X, Columns),
            Whole((bounds.MaxX - Corner.X) / Step.X + 1, Columns));
        var (first, last) = (Whole((Corner.Y - View.Y - bounds.MaxY) / Step.Y, Rows),
            Whole((Corner.Y - bounds.MinY) / Step.Y + 1, Rows));
        for (var row = first; row <= last; row++)
            for (var column = left; column <= right; column++)
                if (Window(row, column).Intersects(bounds)) yield return row * Columns + column;

        static int Whole(double place, int count) => (int)Math.Clamp(place, 0, count - 1);
    }

    /// <summary>Where vertical seams lie: in the middle of the overlaps.</summary>
    public IEnumerable<double> SeamsAcross => Enumerable.Range(1, Columns - 1).Select(c => Corner.X + c * Step.X + Overlap / 2);

    /// <summary>Where level seams lie.</summary>
    public IEnumerable<double> SeamsDown => Enumerable.Range(1, Rows - 1).Select(r => Corner.Y - r * Step.Y - Overlap / 2);

    /// <summary>Places that neighbours both show: where seams cross, and two on each seam between two pages.</summary>
    public IEnumerable<Vec2> Crosses()
    {
        // A quarter from either end: far enough from each other to hold a page straight.
        var down = SeamsDown.Concat(Enumerable.Range(0, Rows).SelectMany(r => Quarters(Corner.Y - r * Step.Y, -View.Y)));
        var across = Enumerable.Range(0, Columns).SelectMany(c => Quarters(Corner.X + c * Step.X, View.X));
        return SeamsAcross.SelectMany(x => down.Select(y => new Vec2(x, y)))
            .Concat(SeamsDown.SelectMany(y => across.Select(x => new Vec2(x, y))));
    }

    private static double[] Quarters(double from, double length) => [from + length / 4, from + length * 3 / 4];

    private static TileGrid Over(Bounds drawing, Vec2 paper)
    {
        var view = paper - new Vec2(2 * Margin, 2 * Margin + Strip);
        var (columns, rows) = (Pages(drawing.Width, view.X), Pages(drawing.Height, view.Y));
        var whole = new Vec2(columns * (view.X - Overlap) + Overlap, rows * (view.Y - Overlap) + Overlap);
        return new(rows, columns, view, drawing.Centre + new Vec2(-whole.X / 2, whole.Y / 2));
    }

    private static int Pages(double length, double view) =>
        Math.Max(1, (int)Math.Ceiling((length - Overlap) / (view - Overlap) - 1e-9));
}
