using System.Collections.Immutable;
using System.Text.RegularExpressions;
using BuckGen.Design;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;
using BuckGen.Output.Pictures.Templates;
using BuckGen.Tests.Design.Venting;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

[Trait("Tier", "slow")]
public partial class TilesTests
{
    private const double PrinterEdge = 9.5;

    private static readonly BuckDesign Wide = Vented.Design(Vented.Rectangle(420, 300), Vented.Spec());
    private static readonly BuckDesign Small = Vented.Design(Vented.Rectangle(90, 60), Vented.Spec());

    [Theory]
    [InlineData(Paper.A4, 210, 297)]
    [InlineData(Paper.Letter, 215.9, 279.4)]
    public void Every_page_is_a_sheet_of_the_paper_upright_or_lying(Paper paper, double width, double height)
    {
        foreach (var size in Printed(Wide, paper).Select(p => p.Size))
            Assert.True(Same(size, new(width, height)) || Same(size, new(height, width)), $"{size}");
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void The_check_square_is_100_mm_and_says_so(Paper paper)
    {
        var cover = Printed(Wide, paper)[0];

        var square = cover.Boxes.MinBy(b => Math.Abs(b.Width - 100) + Math.Abs(b.Height - 100));
        Assert.Equal(100.0, square.Width, 0.01);
        Assert.Equal(100.0, square.Height, 0.01);
        Assert.Contains("print at 100 %", cover.Text, StringComparison.Ordinal);
        Assert.Contains("100 mm (3.937 in)", cover.Text, StringComparison.Ordinal);
        Assert.All(Printed(Wide, paper).Skip(1),
            p => Assert.Contains(p.Lines, l => Math.Abs(l.From.DistanceTo(l.To) - 100) < 0.01));
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Laid_cross_on_cross_the_pages_show_every_vent_where_the_design_has_it(Paper paper)
    {
        var pages = Printed(Wide, paper).Skip(1).ToDictionary(p => Label().Match(p.Text).Groups[1].Value);
        var places = LaidOut(pages);
        // The upper left page is laid where it belongs; the crosses alone place the others.
        var first = Tiles.Split(DrillTemplate.ForPaper(Wide)!, paper)
            .First(p => p.Title.EndsWith(", A1", StringComparison.Ordinal)).Page.LowerLeft;

        var drilled = pages.SelectMany(p => p.Value.Circles.Select(c => (Centre: c.Centre + places[p.Key] + first, c.Radius)))
            .ToList();
        Assert.InRange(Wide.Vents!.Vents.Length, 20, 10_000);
        foreach (var vent in Wide.Vents.Vents)
            Assert.True(drilled.Where(d => Math.Abs(d.Radius - vent.Diameter / 2) < 0.01)
                .Min(d => d.Centre.DistanceTo(vent.Centre)) < 0.01, $"{vent}");
    }

    [Fact]
    public void A_small_drawing_takes_a_cover_and_one_page_without_seams()
    {
        var pages = Printed(Small, Paper.A4);

        Assert.Equal(2, pages.Length);
        Assert.Contains("A1 of A1", pages[1].Text, StringComparison.Ordinal);
        Assert.DoesNotContain(pages[1].Circles, c => Math.Abs(c.Radius - 2) < 0.01
            && !Small.Vents!.Vents.Any(v => Math.Abs(v.Diameter - 4) < 0.01));
        Assert.DoesNotContain("spread over", pages[0].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("A job")]
    [InlineData(
        "A JOB WITH A VERY LONG NAME WRITTEN IN CAPITALS BY SOMEBODY WHO WANTED THE WHOLE STORY OF THE BOATHOUSE IN THE "
        + "TITLE AND SOME MORE")]
    [InlineData("")]
    public void No_letter_leaves_the_paper_that_printers_reach_and_no_two_lines_of_text_meet(string title)
    {
        foreach (var design in (BuckDesign[])[Wide, Small])
            foreach (var page in
                PrintedPage.Read(PdfPicture.Write(Tiles.Split(DrillTemplate.ForPaper(design, title)!, Paper.A4))))
            {
                var inner = new Bounds(0, 0, page.Size.X, page.Size.Y).Grown(-PrinterEdge);
                var letters = page.Letters.Where(l => l.Value.Trim().Length > 0).ToList();
                Assert.NotEmpty(letters);
                Assert.All(letters, l => Assert.True(inner.Contains(l.Box), $"{l}"));
                for (var i = 0; i < letters.Count; i++)
                    for (var j = i + 1; j < letters.Count; j++)
                        Assert.False(letters[i].Box.Grown(-0.15).Intersects(letters[j].Box.Grown(-0.15))
                            && letters[i].Box.Height > 0.5, $"{letters[i]} {letters[j]}");
            }
    }

    [Fact]
    public void Words_that_fit_no_cover_go_on_on_a_page_of_their_own()
    {
        var template = DrillTemplate.ForPaper(Small)!;
        var pages = Tiles
            .Split(template with { Words = [.. Enumerable.Range(1, 60).Select(i => $"Paragraph number {i}.")] }, Paper.A4);

        Assert.Equal(3, pages.Length);
        Assert.All(Enumerable.Range(1, 60),
            i => Assert.Single(pages.SelectMany(p => p.Items).OfType<PictureText>(), t => t.Text == $"Paragraph number {i}."));
    }

    [Fact]
    public void A_word_at_a_seam_is_whole_on_one_page_and_cut_on_none()
    {
        // Less wide than the overlap, so that one page or the other has room for it wherever it stands.
        Picture drawing = new("d", new(0, 0, 300, 100), []);
        for (var x = 10; x < 290; x += 5)
        {
            var moved = drawing with { Items = [new PictureText(new(x, 50), "READ", 2, TextAlign.Middle, "#000000")] };
            var shown = Tiles.Split(new(moved, []), Paper.Letter).SelectMany(p => p.Items).OfType<PictureWindow>()
                .Count(w => !w.Items.IsEmpty);
            Assert.InRange(shown, 1, 2);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(-90)]
    public void Text_that_a_page_shows_whole_is_cut_on_none_and_other_text_is_missing_on_none(double turn)
    {
        var (whole, cut) = (0, 0);
        foreach (var align in Enum.GetValues<TextAlign>())
            for (var place = new Vec2(120, 120); place.X < 260; place += new Vec2(1.7, 2.3))
            {
                var text = new PictureText(place, "A long line of text", 3, align, "#000000", turn);
                var width = Helvetica.Width(text.Text, text.Height);
                var start = align switch { TextAlign.Middle => -width / 2, TextAlign.End => -width, _ => 0 };
                var letters = ((Vec2[])[new(start, 0), new(start + width, 0), new(start, 2.1), new(start + width, 2.1)])
                    .Select(p => place + p.Turned(turn * Math.PI / 180)).Aggregate(Bounds.Nothing, (b, p) => b.With(p));
                var windows = Tiles.Split(new(new("d", new(0, 0, 400, 400), [text]), []), Paper.A4).SelectMany(p => p.Items)
                    .OfType<PictureWindow>().ToLookup(w => !w.Items.IsEmpty, w => w.View);

                // A little more than the letters must be in view: what hangs below the line.
                if (windows[true].Concat(windows[false]).Any(v => v.Contains(letters.Grown(1))))
                {
                    Assert.All(windows[true], v => Assert.True(v.Contains(letters), $"{text} is cut by {v}"));
                    Assert.DoesNotContain(windows[false], v => v.Contains(letters.Grown(1)));
                    whole++;
                }
                else if (!windows[true].Any(v => v.Contains(letters)))
                {
                    Assert.DoesNotContain(windows[false], v => v.Intersects(letters));
                    cut++;
                }
            }

        Assert.InRange(whole, 50, 1000);
        Assert.InRange(cut, 5, 1000);
    }

    /// <summary>Found by an attack: a jagged wall 4 m across came to 488 MB, since every page held all of it.</summary>
    [Theory]
    [InlineData(6000)]
    [InlineData(33)]
    [InlineData(32)]
    public void A_page_holds_all_that_it_shows_of_a_line_and_of_a_long_one_nothing_else(int corners)
    {
        var wheel = Loop.Polygon(Enumerable.Range(0, corners).Select(i => new Vec2(400, 0).Turned(2 * Math.PI * i / corners)));
        var ink = new Ink("#000000", 0.5);
        Picture drawing = new("wheel", wheel.Bounds.Grown(2), [new PictureShape([new(wheel.Segments, true)], ink)]);

        var pages = Tiles.Split(new(drawing, []), Paper.A4).Select(p => p.Items.OfType<PictureWindow>().SingleOrDefault())
            .OfType<PictureWindow>().ToArray();

        Assert.Equal(Tiles.Count(new(drawing, []), Paper.A4), pages.Length);
        foreach (var page in pages)
        {
            var held = page.Items.OfType<PictureShape>().SelectMany(s => s.Paths).SelectMany(p => p.Segments).ToHashSet();
            var shown = wheel.Segments.Where(s => s.Bounds.Grown(ink.Width / 2).Intersects(page.View)).ToHashSet();
            Assert.True(held.IsSupersetOf(shown));
            Assert.True(corners <= 32 || held.SetEquals(shown));
        }
    }

    [Fact]
    public void An_area_is_whole_on_every_page_that_shows_some_of_it_and_on_no_other()
    {
        var area = Loop.Rectangle(new(300, 300, 420, 420));
        var shape = new PictureShape([new(area.Segments, true)], new(null, 0, "#000000"));
        Picture drawing = new("area", new(0, 0, 800, 800), [shape]);

        var pages = Tiles.Split(new(drawing, []), Paper.A4).SelectMany(p => p.Items).OfType<PictureWindow>().ToArray();

        Assert.All(pages, p => Assert.Equal(p.View.Intersects(area.Bounds) ? [area.Bounds] : [],
            p.Items.OfType<PictureShape>().Where(s => s.Ink.Fill == "#000000")
                .Select(s => s.Paths.SelectMany(q => q.Segments).Aggregate(Bounds.Nothing, (b, e) => b.With(e.Bounds)))));
        Assert.InRange(pages.Count(p => p.View.Intersects(area.Bounds)), 2, pages.Length - 1);
    }

    [Fact]
    public void Stretches_of_a_line_that_comes_and_goes_are_not_joined()
    {
        // A comb whose teeth reach down onto the pages below and back.
        var teeth = Enumerable.Range(0, 40).SelectMany(i => (Vec2[])[new(4 * i, i % 2 * -400), new(4 * i + 4, i % 2 * -400)])
            .Prepend(new(0, 20)).Append(new(160, 20));
        var comb = Loop.Polygon(teeth);
        Picture drawing = new("comb", comb.Bounds.Grown(2), [new PictureShape([new(comb.Segments, true)], new Ink("#000000"))]);

        foreach (var path in Tiles.Split(new(drawing, []), Paper.A4).SelectMany(p => p.Items).OfType<PictureWindow>()
            .SelectMany(w => w.Items).OfType<PictureShape>().SelectMany(s => s.Paths))
            for (var i = 1; i < path.Segments.Length; i++) Assert.Equal(path.Segments[i - 1].End, path.Segments[i].Start);
    }

    [Fact]
    public void What_a_page_says_of_the_others_grows_with_rows_and_columns_not_with_their_number()
    {
        Picture drawing = new("plate", new(0, 0, 4000, 4000), []);

        var pages = Tiles.Split(new(drawing, []), Paper.A4);

        Assert.InRange(pages.Length, 350, Tiles.MaxPages);
        Assert.All(pages.Skip(1), p => Assert.InRange(p.Items.Length, 1, 100));
    }

    private static ImmutableArray<PrintedPage> Printed(BuckDesign design, Paper paper) =>
        PrintedPage.Read(PdfPicture.Write(Tiles.Split(DrillTemplate.ForPaper(design)!, paper)));

    /// <summary>Where each page comes to lie from the upper left one when its crosses are laid on its neighbours'.</summary>
    private static Dictionary<string, Vec2> LaidOut(Dictionary<string, PrintedPage> pages)
    {
        var places = new Dictionary<string, Vec2> { ["A1"] = default };
        foreach (var name in pages.Keys.Order(StringComparer.Ordinal).Skip(1))
        {
            var (row, column) = (name[0], name[1]);
            var neighbour = column > '1' ? $"{row}{(char)(column - 1)}" : $"{(char)(row - 1)}{column}";
            var (mine, theirs) = (Crosses(pages[name]), Crosses(pages[neighbour]));
            var shared = column > '1'
                ? Pairs(theirs, mine, c => c.X, c => c.Y)
                : Pairs(theirs, mine, c => -c.Y, c => c.X);
            Assert.InRange(shared.Count, 2, 10);
            Assert.All(shared, s => Assert.True(s.DistanceTo(shared[0]) < 0.01));
            places[name] = places[neighbour] + shared[0];
        }

        Assert.InRange(places.Count, 4, 20);
        return places;
    }

    /// <summary>The farthest crosses of one page less the nearest of the next, in order along the seam.</summary>
    private static List<Vec2> Pairs(List<Vec2> before, List<Vec2> after, Func<Vec2, double> over, Func<Vec2, double> along)
    {
        var (last, first) = (before.Max(over), after.Min(over));
        return [.. before.Where(c => over(c) > last - 0.01).OrderBy(along)
            .Zip(after.Where(c => over(c) < first + 0.01).OrderBy(along), (a, b) => a - b)];
    }

    /// <summary>Rings with two lines through their centre that are longer than those of a vent.</summary>
    private static List<Vec2> Crosses(PrintedPage page) =>
        [.. page.Circles.Select(c => c.Centre)
            .Where(c =>
                page.Lines.Count(l => l.From.MidpointTo(l.To).DistanceTo(c) < 0.01
                    && Math.Abs(l.From.DistanceTo(l.To) - 8) < 0.01) == 2)];

    private static bool Same(Vec2 a, Vec2 b) => a.DistanceTo(b) < 0.01;

    [GeneratedRegex(@"([A-Z]\d) of [A-Z]\d")]
    private static partial Regex Label();
}
