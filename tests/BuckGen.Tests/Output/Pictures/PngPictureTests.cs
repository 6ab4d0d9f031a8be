using System.Collections.Immutable;
using System.Text;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Png;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

public class PngPictureTests
{
    private const string Red = "#c00000";
    private static readonly (byte, byte, byte) White = (255, 255, 255), InRed = (192, 0, 0);

    [Fact]
    public void The_height_follows_the_width()
    {
        var image = Drawn(new(10, 20, 50, 30), 80);

        Assert.Equal((80, 20), (image.Width, image.Height));
        Assert.Equal(0, image.Inked);
    }

    [Fact]
    public void A_pixel_is_coloured_as_far_as_it_is_covered()
    {
        // From 2 to 5.5 pixels across and 2 to 6 down.
        var image = Drawn(new(0, 0, 10, 10), 10, Rectangle(new(2, 4, 5.5, 8), new(null, 0, Red)));

        Assert.Equal(InRed, image[2, 2]);
        Assert.Equal(InRed, image[4, 5]);
        Assert.Equal((224, 128, 128), image[5, 3]);
        Assert.All(((int X, int Y)[])[(1, 3), (6, 3), (3, 1), (3, 6)], p => Assert.Equal(White, image[p.X, p.Y]));
    }

    [Fact]
    public void What_reaches_beyond_the_page_fills_it_to_its_edges()
    {
        var image = Drawn(new(0, 0, 10, 10), 10, Rectangle(new(-5, -5, 15, 15), new(null, 0, Red)));

        Assert.All(((int X, int Y)[])[(0, 0), (9, 0), (0, 9), (9, 9), (5, 5)], p => Assert.Equal(InRed, image[p.X, p.Y]));
    }

    [Fact]
    public void What_lies_above_the_page_leaves_no_trace_on_it()
    {
        var image = Drawn(new(0, 0, 10, 10), 10, new PictureShape(
            [.. ((Bounds[])[new(2, 12, 8, 15), new(4, 2, 6, 4)]).Select(b => new PicturePath(Loop.Rectangle(b).Segments, true))],
            new(null, 0, Red)));

        Assert.All(Enumerable.Range(0, 10), x => Assert.Equal(White, image[x, 0]));
        Assert.Equal(InRed, image[4, 7]);
    }

    [Fact]
    public void A_loop_within_a_loop_is_a_hole()
    {
        var image = Drawn(new(0, 0, 10, 10), 100, new PictureShape(
            [.. ((Loop[])[Loop.Circle(new(5, 5), 4), Loop.Circle(new(5, 5), 2)]).Select(l => new PicturePath(l.Segments, true))],
            new(null, 0, Red)));

        Assert.Equal((White, InRed, White), (image[50, 50], image[20, 50], image[5, 5]));
        Assert.Equal(Math.PI * (16 - 4) / 100, image.Pixels.Chunk(3).Average(p => (255 - p[1]) / 255.0), 0.002);
    }

    [Fact]
    public void Lines_have_their_given_width_and_are_broken_where_they_are_dashed()
    {
        var image = Drawn(new(0, 0, 20, 10), 200,
            PictureShape.Line(new(0, 8), new(20, 8), new(Red, 0.6)),
            PictureShape.Line(new(0, 2), new(20, 2), new(Red, 0.6) { Dashes = [3, 1] }));

        Assert.Equal((White, InRed, InRed, White), (image[100, 16], image[100, 17], image[100, 22], image[100, 23]));
        Assert.Equal((InRed, White, InRed), (image[29, 80], image[31, 80], image[41, 80]));
    }

    [Fact]
    public void Dashes_run_on_from_piece_to_piece_of_a_line()
    {
        var ink = new Ink(Red, 0.6) { Dashes = [3, 1.2, 0.7] };
        double[] stops = [0, 0.4, 2.9, 3.3, 8, 8.1, 15, 20];

        var whole = Drawn(new(0, 0, 20, 4), 200, PictureShape.Line(new(0, 2), new(20, 2), ink));
        var inPieces = Drawn(new(0, 0, 20, 4), 200, new PictureShape(
            [new([.. stops.Zip(stops.Skip(1), (a, b) => new Segment(new Vec2(a, 2), new Vec2(b, 2)))], false)], ink));

        Assert.InRange(whole.Inked, 0.05, 0.12);
        Assert.Equal(0, whole.DifferenceTo(inPieces), 1e-3);
    }

    [Fact]
    public void A_window_cuts_off_what_lies_outside()
    {
        var image = Drawn(new(0, 0, 10, 10), 100,
            new PictureWindow(new(2, 2, 6, 6), [Rectangle(new(0, 0, 10, 10), new(null, 0, Red))]));

        Assert.Equal(0.16, image.Inked, 0.001);
        Assert.Equal((InRed, White), (image[21, 79], image[61, 79]));
        // One of half a pixel at the page's edge leaves half a pixel.
        var narrow = Drawn(new(0, 0, 10, 10), 10,
            new PictureWindow(new(0, 0, 0.5, 10), [Rectangle(new(0, 0, 10, 10), new(null, 0, Red))]));
        Assert.Equal(((224, 128, 128), White), (narrow[0, 5], narrow[1, 5]));
    }

    [Fact]
    public void Text_stands_where_it_is_put_whichever_way_it_is_turned()
    {
        var level = Drawn(new(0, 0, 40, 40), 400, new PictureText(new(20, 20), "HIH", 4, TextAlign.Middle, "#000000"));
        var upright = Drawn(new(0, 0, 40, 40), 400, new PictureText(new(20, 20), "HIH", 4, TextAlign.Middle, "#000000", 90));

        var (across, along) = (Inked(level), Inked(upright));
        Assert.Equal(20, across.Centre.X, 0.2);
        Assert.Equal(20, across.MinY, 0.1);
        // Capital letters are some 0.73 of the body.
        Assert.Equal(4 * 0.73, across.Height, 0.1);
        Assert.Equal(across.Width, along.Height, 0.1);
        Assert.Equal(20, along.MaxX, 0.1);
    }

    [Fact]
    public void What_leads_somewhere_is_drawn_like_the_rest()
    {
        var shape = Rectangle(new(2, 2, 8, 8), new(null, 0, Red));

        var linked = Drawn(new(0, 0, 10, 10), 50, new PictureLink("a", "b", "words", [shape]));

        Assert.True(linked.Inked > 0.3);
        Assert.Equal(0, linked.DifferenceTo(Drawn(new(0, 0, 10, 10), 50, shape)));
    }

    /// <summary>The letter is the same from left and right, from above and below, and round.</summary>
    [Fact]
    public void An_O_is_round_and_even()
    {
        var image = Drawn(new(0, 0, 20, 20), 200, new PictureText(new(10, 5), "O", 12, TextAlign.Middle, "#000000"));

        var box = Inked(image);
        int Ink(int x, int y) => image[x, y].Red < 128 ? 1 : 0;
        var (left, right) = ((int)Math.Round(box.MinX * 10), (int)Math.Round(box.MaxX * 10) - 1);
        var (top, bottom) = (200 - (int)Math.Round(box.MaxY * 10), 200 - (int)Math.Round(box.MinY * 10) - 1);
        var pixels = Enumerable.Range(left, right - left + 1)
            .SelectMany(x => Enumerable.Range(top, bottom - top + 1).Select(y => (X: x, Y: y))).ToArray();
        var inked = pixels.Sum(p => Ink(p.X, p.Y));
        Assert.InRange(pixels.Count(p => Ink(p.X, p.Y) != Ink(left + right - p.X, p.Y)), 0, 0.05 * inked);
        Assert.InRange(pixels.Count(p => Ink(p.X, p.Y) != Ink(p.X, top + bottom - p.Y)), 0, 0.05 * inked);
        Assert.All(((int X, int Y)[])[(left, top), (right, top), (left, bottom), (right, bottom)],
            p => Assert.Equal(0, Ink(p.X, p.Y)));
        // An ellipse takes pi/4 of its box (geometry).
        var enclosed = Enumerable.Range(top, bottom - top + 1).Sum(y =>
        {
            var row = Enumerable.Range(left, right - left + 1).Where(x => Ink(x, y) == 1).ToArray();
            return row.Length == 0 ? 0 : row[^1] - row[0] + 1;
        });
        Assert.InRange((double)enclosed / pixels.Length, 0.75, 0.85);
    }

    [Fact]
    public void The_signs_of_drawings_are_there_and_what_is_not_is_a_box()
    {
        Assert.All("ØøÄß×·²³°–—…±µ≤≥≈⌀“”’Ωπ→".EnumerateRunes(), r => Assert.True(Letters.Has(r), $"no {r}"));
        Assert.False(Letters.Has(new Rune('木')));
        var box = Drawn(new(0, 0, 10, 10), 100, new PictureText(new(2, 3), "木", 5, TextAlign.Start, "#000000"));
        var same = Drawn(new(0, 0, 10, 10), 100, new PictureText(new(2, 3), "🪵", 5, TextAlign.Start, "#000000"));

        Assert.True(box.Inked > 0.01);
        Assert.Equal(0, box.DifferenceTo(same));
    }

    [Fact]
    public void The_letters_licence_goes_with_them()
    {
        using var stream = typeof(Letters).Assembly.GetManifestResourceStream("BuckGen.Output.Pictures.Png.letters-licence.txt")!;
        using var reader = new StreamReader(stream);
        Assert.Contains("Bitstream Vera Fonts Copyright", reader.ReadToEnd(), StringComparison.Ordinal);
    }

    /// <summary>Whatever is painted, other readers get the very pixels back.</summary>
    [Fact]
    public void What_is_packed_can_be_unpacked() =>
        Gen.Select(Gen.Int[1, 40], Gen.Int[1, 30], Gen.Byte.Array[0, 3600]).Sample((width, height, noise) =>
    {
        var raster = new Raster(width, height);
        for (var i = 0; i < Math.Min(noise.Length, raster.Pixels.Length); i++)
            raster.Pixels[i] = noise[i] > 200 ? noise[i] : raster.Pixels[i];
        var image = PngImage.Read([.. PngFile.Write(raster)]);
        Assert.Equal((width, height), (image.Width, image.Height));
        Assert.Equal(raster.Pixels, image.Pixels);
    }, iter: 300);

    /// <summary>With the fixed codes 258 bytes that repeat take 13 bits (RFC 1951); the starts of rows take the rest.</summary>
    [Fact]
    public void An_empty_page_takes_little_room()
    {
        var raster = new Raster(500, 400);

        Assert.InRange(PngFile.Write(raster).Length, 100, raster.Pixels.Length / 100);
    }

    private static PngImage Drawn(Bounds page, int width, params ImmutableArray<PictureItem> items)
    {
        var picture = new Picture("test", page, items);
        var file = PngPicture.Write(picture, width);
        Assert.Equal(file, PngPicture.Write(picture, width));
        return PngImage.Read([.. file]);
    }

    private static PictureShape Rectangle(Bounds b, Ink ink) => new([new(Loop.Rectangle(b).Segments, true)], ink);

    /// <summary>What is inked, in the page's millimetres at ten pixels each.</summary>
    private static Bounds Inked(PngImage image) =>
        Enumerable.Range(0, image.Width * image.Height).Select(i => (X: i % image.Width, Y: i / image.Width))
        .Where(p => image[p.X, p.Y].Red < 128)
        .Aggregate(Bounds.Nothing,
            (b, p) =>
                b.With(new Bounds(p.X / 10.0, (image.Height - p.Y - 1) / 10.0, (p.X + 1) / 10.0, (image.Height - p.Y) / 10.0)));
}
