using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Pdf;
using BuckGen.Output.Pictures.Svg;
using Snapshooter.Xunit3;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

public class PdfPictureTests
{
    private static readonly Ink Thin = new("#000000");

    [Fact]
    public void A_page_has_its_size_and_counts_from_its_own_corner_upward()
    {
        var page = Page(new Bounds(-20, 30, 80, 100), PictureShape.Line(new(-20, 30), new(10, 50), Thin));

        Assert.Equal((100, 70), (page.Size.X, page.Size.Y), Within(0.001));
        var (from, to) = Assert.Single(page.Lines);
        Assert.Equal((0, 0), (from.X, from.Y), Within(0.001));
        Assert.Equal((30, 20), (to.X, to.Y), Within(0.001));
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(-0.4)]
    [InlineData(1.0)]
    [InlineData(-2.3)]
    public void Every_point_of_an_arc_lies_on_its_circle_and_on_the_right_side(double bulge)
    {
        var arc = new Segment(new(60, 50), new(40, 65), bulge);
        var page = Page(new(0, 0, 100, 100), new PictureShape([new([arc], false)], Thin));

        var curves = page.Paths.SelectMany(p => p).SelectMany(s => s.Commands).OfType<PdfSubpath.CubicBezierCurve>().ToList();
        Assert.NotEmpty(curves);
        for (var i = 0; i < curves.Count; i++)
            for (var t = 0.0; t <= 1; t += 0.125)
            {
                Assert.InRange(arc.DistanceTo(On(curves[i], t)), 0, 0.0005);
                // A curve does not run evenly: its points lie on the arc, not quite where the same share of its length is.
                Assert.InRange(On(curves[i], t).DistanceTo(arc.PointAt((i + t) / curves.Count)), 0, 0.05);
            }
    }

    [Fact]
    public void Fills_are_even_odd_and_dashes_are_kept()
    {
        var page = Page(new(0, 0, 100, 100),
            new PictureShape([new(Loop.Circle(new(50, 50), 40).Segments, true), new(Loop.Circle(new(50, 50), 20).Segments, true)],
                new(null, 0, "#804020")),
            PictureShape.Line(new(0, 0), new(9, 9), Thin with { Dashes = [3, 1.5] }));

        Assert.Equal((true, false, FillingRule.EvenOdd, 2),
            (page.Paths[0].IsFilled, page.Paths[0].IsStroked, page.Paths[0].FillingRule, page.Paths[0].Count));
        Assert.Equal((128 / 255.0, 64 / 255.0),
            (page.Paths[0].FillColor!.ToRGBValues().r, page.Paths[0].FillColor!.ToRGBValues().g), Within(0.001));
        Assert.Equal((false, true), (page.Paths[1].IsFilled, page.Paths[1].IsStroked));
        Assert.Equal([3, 1.5], page.Paths[1].LineDashPattern!.Value.Array.Select(d => Math.Round(d, 3)));
    }

    [Fact]
    public void Our_widths_of_letters_are_those_of_the_font()
    {
        var text = string
            .Concat(Enumerable.Range(32, 95).Concat(Enumerable.Range(0xa1, 0x5f)).Except([0xad]).Select(c => (char)c))
            + "€‚ƒ„…†‡ˆ‰Š‹Œ‘’“”•–—˜™š›œžŸŽ";
        foreach (var letter in text)
        {
            // A figure after each letter shows how far the writer's reader moves on.
            var letters =
                Page(new(0, 0, 100, 100), new PictureText(new(10, 10), letter + "1", 10, TextAlign.Start, "#000000")).Letters;
            Assert.Equal(letter.ToString(), letters[0].Value);
            Assert.True(Math.Abs(letters[1].Place.X - 10 - Helvetica.Width(letter.ToString(), 10)) < 0.002,
                $"'{letter}' is {letters[1].Place.X - 10} wide, not {Helvetica.Width(letter.ToString(), 10)}");
        }
    }

    [Theory]
    [InlineData(nameof(TextAlign.Start), 0, 50, 50)]
    [InlineData(nameof(TextAlign.End), 0, 44.44, 50)]
    [InlineData(nameof(TextAlign.Middle), 90, 50, 47.22)]
    [InlineData(nameof(TextAlign.End), 180, 55.56, 50)]
    public void Text_stands_where_it_is_aligned_and_turned(string align, double turn, double x, double y)
    {
        // A figure is 0.556 of the body wide.
        var letter =
            Assert.Single(
                Page(new(0, 0, 100, 100),
                    new PictureText(new(50, 50), "4", 10, Enum.Parse<TextAlign>(align), "#000000", turn)).Letters);

        Assert.Equal((x, y), (letter.Place.X, letter.Place.Y), Within(0.005));
    }

    [Theory]
    [InlineData("Möwe & <Söhne> (\\) 5 € – “x”", "Möwe & <Söhne> (\\) 5 € – “x”")]
    [InlineData("鳥 one", "? one")]
    [InlineData("two 🦆s", "two ?s")]
    public void Characters_that_the_font_lacks_become_question_marks_and_the_rest_survive(string title, string shown)
    {
        Picture picture = new(title, new(0, 0, 200, 50), [new PictureText(new(5, 5), title, 5, TextAlign.Start, "#000000")]);
        var file = PdfPicture.Write([picture]);

        Assert.Equal(shown, PrintedPage.Read(file)[0].Text);
        using var document = PdfDocument.Open([.. file]);
        Assert.Equal(title, document.Information.Title);
    }

    [Fact]
    public void Half_a_character_is_shown_by_its_code()
    {
        var page = Page(new(0, 0, 100, 100), new PictureText(new(5, 5), "a\ud800b", 5, TextAlign.Start, "#000000"));

        Assert.Equal(@"a\uD800b", page.Text);
    }

    [Fact]
    public void A_window_cuts_off_what_lies_outside_and_ends_with_it()
    {
        PictureWindow window = new(new(10, 10, 30, 40), [PictureShape.Line(new(0, 0), new(50, 50), Thin)]);
        var text = Encoding.ASCII
            .GetString(PdfPicture
                .Write([new("w", new(0, 0, 100, 100), [window, PictureShape.Line(new(60, 60), new(70, 70), Thin)])]).AsSpan());

        Assert.Matches(@"q 10 10 20 30 re W n\n.*50 50 l S\nQ\n.*70 70 l S", text);
        Assert.Contains("<svg x=\"10\" y=\"60\" width=\"20\" height=\"30\" viewBox=\"10 60 20 30\"><path",
            Encoding.UTF8.GetString(SvgPicture.Write(new("w", new(0, 0, 100, 100), [window])).AsSpan()),
            StringComparison.Ordinal);
    }

    [Fact]
    public void No_date_and_no_identifier_is_written_and_two_runs_agree()
    {
        Picture picture = new("same", new(0, 0, 100, 100), [PictureShape.Circle(new(50, 50), 20, Thin)]);
        var (first, second) = (PdfPicture.Write([picture, picture]), PdfPicture.Write([picture, picture]));

        Assert.Equal(first, second);
        using var document = PdfDocument.Open([.. first]);
        Assert.Null(document.Information.CreationDate);
        Assert.Null(document.Information.ModifiedDate);
        Assert.DoesNotContain("/ID", Encoding.ASCII.GetString(first.AsSpan()), StringComparison.Ordinal);
        Assert.Equal(2, document.NumberOfPages);
        Assert.Throws<ArgumentException>(() => PdfPicture.Write([]));
    }

    [Fact]
    public void The_file_of_a_page_with_all_kinds_of_items_stays_as_it_was() =>
        Snapshot.Match(Encoding.ASCII.GetString(PdfPicture.Write([new("A (page)", new(-10, 5, 110, 65),
        [
            PictureShape.Line(new(0, 10), new(100.25, 60), Thin with { Width = 0.35, Dashes = [3, 1.5] }),
            new PictureShape([new(Loop.Circle(new(50, 30), 12.5).Segments, true)], new("#1f5fbf", 0.2, "#e3c89a")),
            new PictureWindow(new(20, 10, 60, 40), [new PictureShape([new([new(new(20, 10), new(60, 40), 0.4)], false)], Thin)]),
            new PictureText(new(10, 20), "Ends (left) \\ 5 €", 3.2, TextAlign.End, "#b4420a", 90),
            new PictureText(new(50, 60), "Middle", 5, TextAlign.Middle, "#000000"),
        ])]).AsSpan()));

    /// <summary>
    /// ISO 32000-1, 7.5.4: entries of 20 bytes, each the place of its object. Readers repair what is wrong, so none is asked.
    /// </summary>
    [Fact]
    public void The_table_of_places_leads_to_every_object()
    {
        var text = Encoding.ASCII.GetString(PdfPicture.Write([new("w", new(0, 0, 100, 100), [])]).AsSpan());

        var table = int.Parse(Regex.Match(text, @"startxref\n(\d+)\n%%EOF\n$").Groups[1].Value, CultureInfo.InvariantCulture);
        var count = Regex.Count(text, @"^\d+ 0 obj$", RegexOptions.Multiline);
        var head = $"xref\n0 {count + 1}\n";
        Assert.InRange(count, 4, 10);
        Assert.Equal(head, text.Substring(table, head.Length));
        string[] entries = [.. Enumerable.Range(0, count + 1).Select(i => text.Substring(table + head.Length + 20 * i, 20))];
        Assert.Equal("0000000000 65535 f \n", entries[0]);
        Assert.All(entries.Index().Skip(1), e =>
        {
            Assert.EndsWith(" 00000 n \n", e.Item);
            Assert.StartsWith($"{e.Index} 0 obj\n", text[int.Parse(e.Item[..10], CultureInfo.InvariantCulture)..]);
        });
        Assert.StartsWith($"trailer\n<< /Size {count + 1} /Root ", text[(table + head.Length + 20 * (count + 1))..]);
    }

    private static PrintedPage Page(Bounds page, params ImmutableArray<PictureItem> items) =>
        PrintedPage.Read(PdfPicture.Write([new("test", page, items)]))[0];

    private static Func<(double, double), (double, double), bool> Within(double tolerance) =>
        (a, b) => Math.Abs(a.Item1 - b.Item1) <= tolerance && Math.Abs(a.Item2 - b.Item2) <= tolerance;

    private static Vec2 On(PdfSubpath.CubicBezierCurve c, double t)
    {
        var (a, b, d, e) = (Math.Pow(1 - t, 3), 3 * t * Math.Pow(1 - t, 2), 3 * t * t * (1 - t), t * t * t);
        return new Vec2(
            a * c.StartPoint.X + b * c.FirstControlPoint.X + d * c.SecondControlPoint.X + e * c.EndPoint.X,
            a * c.StartPoint.Y + b * c.FirstControlPoint.Y + d * c.SecondControlPoint.Y + e * c.EndPoint.Y) * (25.4 / 72);
    }
}
