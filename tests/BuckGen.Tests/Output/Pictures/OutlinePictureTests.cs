using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Pictures;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Svg;
using BuckGen.Tests.Intake.Outlines;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Output.Pictures;

public class OutlinePictureTests
{
    private const double Near = 1e-9;
    private const string Mending = "#b4420a";
    private const string Measuring = "#1f5fbf";

    private static readonly Outline Mended = Reading.Dxf(
        Line(0, 0, 80, 0), Line(80, 0.05, 80, 50), Line(80, 50, 0, 50), Line(0, 50, 0, 0), Line(0, 50, 80, 50));

    [Fact]
    public void Every_repair_has_a_ring_at_its_place_with_its_number()
    {
        var picture = OutlinePicture.Draw(Mended);

        Assert.Equal(["duplicate-removed", "gap-joined"], Mended.Repairs.Select(r => r.Kind));
        var rings = RingsOf(picture, Mending);
        Assert.Equal(2, rings.Length);
        // 80 mm fit the page at 2:1: two places 40 and 50 mm apart lie twice as far apart on paper.
        Assert.Equal(2 * (Mended.Repairs[0].Places[0] - Mended.Repairs[1].Places[0]).Length, (rings[0] - rings[1]).Length, 1e-6);
        Assert.Equal(["1", "2"], Texts(picture).Where(t => t is [>= '0' and <= '9']));
        Assert.Contains(Texts(picture), t => t.StartsWith("1: 1 line or arc drawn again", StringComparison.Ordinal));
        Assert.Contains(Texts(picture),
            t => t.StartsWith("2: 1 gap between ends was closed, the largest 0.05 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_measure_has_a_lettered_ring_and_widths_a_line()
    {
        var picture = OutlinePicture.Draw(Mended);

        // A rectangle of 80 x 50 mm: its neck is its height, its corners are square; it has no gap and no radius.
        Assert.Equal(["N", "C"], Texts(picture).Where(t => t is "N" or "G" or "I" or "O" or "C"));
        Assert.Equal(2, RingsOf(picture, Measuring).Length);
        var line = Assert.Single(picture.Items.OfType<PictureShape>(), s => s.Ink.Stroke == Measuring && !s.Paths[0].Closed);
        Assert.Equal(100, line.Paths[0].Segments[0].Length, 0.2);
        Assert.Contains(Texts(picture), t => t.StartsWith("N: narrowest neck ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_outline_is_drawn_to_the_scale_that_is_stated()
    {
        var picture = OutlinePicture.Draw(Mended);

        var drawn = ShapeOf(picture).Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds));
        Assert.Equal((160, 100), (drawn.Width, Math.Round(drawn.Height, 6)));
        Assert.Contains("Scale 2:1", Texts(picture));
        Assert.Contains("80 mm (3.15 in)", Texts(picture));
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(90)]
    [InlineData(7000)]
    public void Everything_stands_on_the_page(double size)
    {
        var region = Region.FromLoops([Loop.Rectangle(new(-3, 5, -3 + size, 5 + 1.3 * size))]);
        var picture =
            OutlinePicture.Draw(Outline
                .FromRegion(string.Join(' ', Enumerable.Repeat("a long name", 20)), region) with
            { Notes = [new("long", string.Join(' ', Enumerable.Repeat("words", 80)))] });

        Assert.All(picture.Items.OfType<PictureShape>(),
            s => Assert.All(s.Paths.SelectMany(p => p.Segments), e => Assert.True(picture.Page.Contains(e.Bounds))));
        Assert.All(picture.Items.OfType<PictureText>(), t =>
        {
            Assert.True(picture.Page.Contains(t.Place));
            if (t.Align == TextAlign.Start)
                Assert.InRange(t.Place.X + t.Text.Length * PictureText.UsualLetterWidth * t.Height, 0, picture.Page.MaxX);
        });
    }

    [Fact]
    public void Without_words_there_are_no_lines_of_words() => Assert.Empty(TextLines.Wrap(" ", 10));

    [Fact]
    public void The_words_stand_clear_of_the_drawing_with_one_line_of_room_for_each()
    {
        var picture = OutlinePicture.Draw(Mended);

        var drawn = ShapeOf(picture).Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds));
        var words = picture.Items.OfType<PictureText>().Where(t => t.Place.Y < drawn.MinY - 10).Select(t => t.Place.Y).ToArray();
        Assert.InRange(words.Length, 4, 10);
        Assert.Contains(Texts(picture), t => Regex.IsMatch(t, @"^\d+ closed loops?: \d+ islands?, \d+ holes?\. Unit: "));
        Assert.Equal(words.OrderDescending(), words);
        // The last line stands on the margin of 10 mm.
        Assert.Equal(10, words[^1], 1e-9);
        Assert.All(words.Zip(words.Skip(1)),
            w => Assert.InRange(w.First - w.Second, 1.2 * TextLines.Height, 2 * TextLines.Height));
    }

    [Fact]
    public void Numbers_never_cover_each_other_and_a_crowd_keeps_its_rings()
    {
        var crowd = Enumerable.Range(0, 150).Select(i => new Vec2(i % 15 * 0.8, i / 15 * 0.8)).ToList();
        var outline = Mended with { Repairs = [new("gap-joined", crowd.Count, 0.1, [.. crowd], "150 gaps")] };

        var picture = OutlinePicture.Draw(outline);

        Assert.Equal(crowd.Count, RingsOf(picture, Mending).Length);
        var numbers = picture.Items.OfType<PictureText>().Where(t => t.Text.All(char.IsAsciiDigit)).ToList();
        Assert.InRange(numbers.Count, 10, crowd.Count - 1);
        Assert.All(numbers,
            n => Assert.All(numbers.Where(m => m != n), m => Assert.True(
                Math.Abs(m.Place.X - n.Place.X) > 1.7 || Math.Abs(m.Place.Y - n.Place.Y) > 2.3)));
        // Nor a ring: not even one that is drawn later.
        Assert.All(numbers, n => Assert.All(RingsOf(picture, Mending),
            r => Assert.True(Math.Abs(r.X - n.Place.X) > 1.6 || Math.Abs(r.Y - n.Place.Y - 1) > 1.6, $"{n.Text} covers {r}")));
    }

    [Fact]
    public void Names_from_files_are_text_and_never_markup()
    {
        var region = Region.FromLoops([Loop.Circle(new(0, 0), 10)]);
        var svg = SvgPicture.Write(OutlinePicture.Draw(Outline.FromRegion("<script>&\"\u0001", region)));

        var root = XDocument.Parse(Encoding.UTF8.GetString([.. svg])).Root!;
        Assert.Equal("<script>&\"\\u0001", root.Elements().First().Value);
        Assert.DoesNotContain(root.Descendants(), e => e.Name.LocalName == "script");
        Assert.True(SvgPicture.IsOurs([.. svg]));
    }

    [Fact]
    public void The_file_draws_what_the_picture_says()
    {
        var svg = XDocument.Parse(Encoding.UTF8.GetString([.. SvgPicture.Write(OutlinePicture.Draw(Mended))])).Root!;

        var (picture, names) = (OutlinePicture.Draw(Mended), svg.Elements().Select(e => e.Name.LocalName).ToList());
        Assert.Equal(picture.Items.OfType<PictureShape>().Count(), names.Count(n => n == "path"));
        Assert.Equal(Texts(picture), svg.Elements().Where(e => e.Name.LocalName == "text").Select(e => e.Value));
    }

    [Theory]
    [InlineData(178, 100, "1:1")]
    [InlineData(178.1, 100, "1:1.5")]
    [InlineData(400, 100, "1:2.5")]
    [InlineData(100, 500, "1:3")]
    [InlineData(110, 90, "1.5:1")]
    [InlineData(89, 90, "2:1")]
    [InlineData(1e6, 1, "1:1000")]
    public void The_scale_is_the_largest_one_that_fits(double width, double height, string scale) =>
        Assert.Equal(scale, DrawingScale.ToFit(width, height, 178, 180).ToString());

    /// <summary>ISO 5455, recommended scales, from memory.</summary>
    [Fact]
    public void Every_recommended_scale_is_taken_for_what_just_fits_it()
    {
        string[] scales = ["50:1", "20:1", "10:1", "5:1", "2:1", "1:1", "1:2", "1:5", "1:10", "1:20", "1:50", "1:100", "1:200",
            "1:500", "1:1000"];

        Assert.Equal(scales, scales.Select(s => s.Split(':').Select(int.Parse).ToArray())
            .Select(s => DrawingScale.ToFit(99.9 * s[1] / s[0], 1e-3, 100, 100).ToString()));
    }

    [Theory]
    [InlineData(168, 10, "Scale 1:1")]
    [InlineData(168.1, 10, "Scale 1:1.5")]
    [InlineData(10, 180, "Scale 1:1")]
    [InlineData(10, 180.1, "Scale 1:1.5")]
    public void The_drawing_has_168_by_180_mm_of_the_page(double width, double height, string scale) =>
        Assert.Contains(scale, Texts(OutlinePicture.Draw(
            Outline.FromRegion("plate", Region.FromLoops([Loop.Rectangle(new(0, 0, width, height))])))));

    private static PictureShape ShapeOf(Picture picture) =>
        picture.Items.OfType<PictureShape>().First(s => s.Ink.Fill is not null);

    /// <summary>Centres of the rings of a colour.</summary>
    private static Vec2[] RingsOf(Picture picture, string colour) => [.. picture.Items.OfType<PictureShape>()
        .Where(s => s.Ink.Fill is null && s.Ink.Stroke == colour && s.Paths is [{ Closed: true } ring]
            && Loop.FromSegments(ring.Segments).AsCircle(Near) is not null)
        .Select(s => Loop.FromSegments(s.Paths[0].Segments).Bounds.Centre)];

    private static string[] Texts(Picture picture) => [.. picture.Items.OfType<PictureText>().Select(t => t.Text)];
}
