using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;

namespace BuckGen.Output.Pictures.Templates;

/// <summary>What each page shows of a drawing, computed for all pages in one walk along its lines.</summary>
internal sealed class TileItems
{
    /// <summary>Paths of at most this many pieces stay whole; of longer ones a page holds the stretches it shows.</summary>
    private const int ShortPath = 32;

    private readonly TileGrid grid;
    private readonly List<PictureItem>[] pages;

    private TileItems(TileGrid grid)
    {
        this.grid = grid;
        pages = [.. Enumerable.Range(0, grid.Rows * grid.Columns).Select(_ => new List<PictureItem>())];
    }

    /// <summary>The items of every page, in the order of their numbers; on a page in the order in which they are drawn.</summary>
    public static IReadOnlyList<IReadOnlyList<PictureItem>> Split(IEnumerable<PictureItem> items, TileGrid grid)
    {
        var made = new TileItems(grid);
        foreach (var item in items) made.Add(item);
        return made.pages;
    }

    private void Add(PictureItem item)
    {
        switch (item)
        {
            case PictureShape { Ink.Fill: null } shape:
                AddLines(shape);
                break;
            case PictureShape shape:
                AddTo(grid.Showing(shape.Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds))
                    .Grown(shape.Ink.Width / 2)), shape);
                break;
            case PictureText text:
                // Words that some page shows whole are left out where they would be cut.
                var (room, near) = (Room(text), grid.Showing(Room(text)).ToArray());
                var whole = near.Where(p => grid.Window(p).Contains(room)).ToArray();
                AddTo(whole.Length > 0 ? whole : near, text);
                break;
            default:
                AddTo(Enumerable.Range(0, pages.Length), item);
                break;
        }
    }

    private void AddTo(IEnumerable<int> numbers, PictureItem item)
    {
        foreach (var number in numbers) pages[number].Add(item);
    }

    private void AddLines(PictureShape shape)
    {
        var shown = new SortedDictionary<int, List<PicturePath>>();
        foreach (var path in shape.Paths)
            foreach (var (page, part) in path.Segments.Length <= ShortPath ? Whole(path, shape.Ink) : Stretches(path, shape.Ink))
            {
                if (!shown.TryGetValue(page, out var paths)) shown[page] = paths = [];
                paths.Add(part);
            }

        foreach (var (page, paths) in shown) pages[page].Add(shape with { Paths = [.. paths] });
    }

    private IEnumerable<(int Page, PicturePath Part)> Whole(PicturePath path, Ink ink) =>
        path.Segments.SelectMany(s => grid.Showing(s.Bounds.Grown(ink.Width / 2))).Distinct().Select(page => (page, path));

    private IEnumerable<(int Page, PicturePath Part)> Stretches(PicturePath path, Ink ink)
    {
        var runs = new SortedDictionary<int, List<List<Segment>>>();
        var last = new Dictionary<int, int>();
        for (var i = 0; i < path.Segments.Length; i++)
            foreach (var page in grid.Showing(path.Segments[i].Bounds.Grown(ink.Width / 2)))
            {
                if (!runs.TryGetValue(page, out var ofPage)) runs[page] = ofPage = [];
                if (!last.TryGetValue(page, out var before) || before != i - 1) ofPage.Add([]);
                ofPage[^1].Add(path.Segments[i]);
                last[page] = i;
            }

        foreach (var (page, ofPage) in runs)
            foreach (var run in ofPage)
                yield return (page, run.Count == path.Segments.Length ? path : new([.. run], Closed: false));
    }

    /// <summary>Room of a text: from a quarter of its body under the base line to its height above it.</summary>
    private static Bounds Room(PictureText text)
    {
        var along = new Vec2(1, 0).Turned(text.Turn * Math.PI / 180);
        var width = Helvetica.Width(text.Text, text.Height);
        var start = text.Place - along * (text.Align switch { TextAlign.Middle => width / 2, TextAlign.End => width, _ => 0 });
        var (low, high) = (along.Left * (-0.25 * text.Height), along.Left * text.Height);
        return Bounds.FromCorners(start + low, start + high)
            .With(Bounds.FromCorners(start + along * width + low, start + along * width + high));
    }
}
