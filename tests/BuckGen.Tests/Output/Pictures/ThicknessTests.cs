using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Png;
using BuckGen.Output.Pictures.Thickness;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

[Trait("Tier", "slow")]
public class ThicknessTests
{
    private static readonly Lazy<BuckDesign> Block =
        new(() =>
            Formed.Design(Shapes.Rectangle(80, 50),
                Formed.Spec(BuckKind.Male, 18, 8) with { Stock = [Formed.Mdf6], Prediction = new() }));

    /// <summary>
    /// Even to the eye and in grey: CIE lightness L* (CIE 15, from memory) rises by nearly the same step from colour to
    /// colour.
    /// </summary>
    [Fact]
    public void Colours_grow_evenly_brighter()
    {
        double[] lightness =
            [.. Enumerable.Range(0, ThicknessColours.Count)
                .Select(i => Lightness(ThicknessColours.At((double)i / (ThicknessColours.Count - 1))))];

        double[] steps = [.. lightness.Zip(lightness.Skip(1), (a, b) => b - a)];
        Assert.All(steps, s => Assert.InRange(s, 0.7 * steps.Average(), 1.3 * steps.Average()));
        Assert.InRange(lightness[^1] - lightness[0], 60, 100);
    }

    [Fact]
    public void Between_the_thinnest_and_the_thickest_each_band_has_its_colour() =>
        Assert.All(Enumerable.Range(0, ThicknessColours.Count), band =>
        {
            var (red, green, blue) = ThicknessColours.At((double)band / (ThicknessColours.Count - 1));
            Assert.Equal(ThicknessColours.ForBand(band), FormattableString.Invariant(
                $"#{(int)Math.Round(255 * red):x2}{(int)Math.Round(255 * green):x2}{(int)Math.Round(255 * blue):x2}"));
        });

    /// <summary>
    /// Nothing of the sheet is left without a colour and nothing has two: the bands' areas add up to the frame, seen from
    /// above.
    /// </summary>
    [Fact]
    public void The_bands_cover_the_sheet()
    {
        var part = Block.Value.Formed!;

        var bands = ThicknessBands.Draw(part, ThicknessScale.ForPart(part), p => new(p.X, p.Y)).ToArray();

        var opening = Block.Value.Blank!.Opening;
        Assert.Equal(opening.Width * opening.Height, bands.Sum(Area), 1e-6 * opening.Width * opening.Height);
        Assert.InRange(bands.Length, 4, ThicknessColours.Count);
        Assert.All(bands, b => Assert.All(b.Paths, p => Assert.True(p.Closed)));
    }

    /// <summary>
    /// Over a sheet whose thickness rises evenly from 0 to 1 mm, each of the ten bands is a tenth of its area, with its limits
    /// where they belong.
    /// </summary>
    [Fact]
    public void A_slope_of_thickness_gives_even_bands()
    {
        var part = Sheet(p => p.X / 100);

        var bands = ThicknessBands.Draw(part, new(0, 1), p => new(p.X, p.Y)).ToArray();

        Assert.Equal(Enumerable.Range(0, 10).Select(ThicknessColours.ForBand), bands.Select(b => b.Ink.Fill));
        Assert.All(bands, b => Assert.Equal(1000, Area(b), 1e-6));
        Assert.All(bands.Select((b, i) => (b, i)),
            t => Assert.Equal((10.0 * t.i, 10.0 * (t.i + 1)), (Extent(t.b).MinX, Extent(t.b).MaxX)));
        Assert.All(bands, b => Assert.Single(b.Paths));
    }

    [Fact]
    public void The_map_shows_its_limits_and_the_thinnest_place()
    {
        var map = ThicknessMap.Draw(Block.Value)!;
        var texts = map.Items.OfType<PictureText>().Select(t => t.Text).ToArray();

        var scale = ThicknessScale.ForPart(Block.Value.Formed!);
        Assert.Contains(FormattableString.Invariant($"{scale.Min:0.00}"), texts);
        Assert.Contains("1.00", texts);
        Assert.Contains("T", texts);
        Assert.Null(ThicknessMap.Draw(Formed.Design(Shapes.Rectangle(80, 50), Formed.Spec(BuckKind.Male, 18))));
    }

    [Fact]
    public void All_of_a_picture_is_on_its_page()
    {
        var wide = Formed
            .Design(Shapes.Slot(60, 30),
                Formed.Spec(BuckKind.Female, 25, 5) with
                {
                    Stock = [Formed.Mdf6],
                    BlockMargin = 60,
                    Former = new() { Opening = new(180, 120) },
                    Prediction = new()
                });
        foreach (var picture in ((BuckDesign[])[Block.Value, wide])
            .SelectMany(d => (Picture?[])[ThicknessMap.Draw(d), ThicknessSection.Draw(d)]).OfType<Picture>())
        {
            var marks = picture.Items.OfType<PictureShape>().Select(Extent)
                .Concat(picture.Items.OfType<PictureText>().Select(Room)).Aggregate((a, b) => a.With(b));
            Assert.True(picture.Page.Contains(marks), $"{picture.Title}: {marks} on {picture.Page}");
        }
    }

    /// <summary>The cut runs from frame to frame in one line, over the face at its full thickness.</summary>
    [Fact]
    public void The_section_follows_the_sheet_from_frame_to_frame()
    {
        var part = Block.Value.Formed!;

        var line = Assert.Single(SheetSection.AtY(part, 25.3));

        Assert.Equal((part.Points.Min(p => p.X), part.Points.Max(p => p.X)), (line[0].X, line[^1].X));
        Assert.Equal(line.Select(p => p.ArcLength).Order(), line.Select(p => p.ArcLength));
        Assert.InRange(line[^1].ArcLength, line[^1].X - line[0].X, 1.6 * (line[^1].X - line[0].X));
        var top = Block.Value.Height;
        Assert.InRange(line.Single(p => p.ArcLength == line.MinBy(q => Math.Abs(q.X - 40)).ArcLength).Thickness, 0.98, 1.0001);
        Assert.Equal(top, line.Max(p => p.Z), 1e-6);
    }

    [Theory]
    [InlineData(1, 4, new[] { 0, 0.5, 1 })]
    [InlineData(0.3, 4, new[] { 0, 0.1, 0.2, 0.3 })]
    [InlineData(334, 8, new[] { 0.0, 50, 100, 150, 200, 250, 300 })]
    public void Axes_have_round_numbers(double length, int most, double[] expected) =>
        Assert.Equal(expected, AxisMarks.Along(length, most).Select(m => Math.Round(m, 9)));

    private static double Lightness((double Red, double Green, double Blue) colour)
    {
        static double Linear(double p) => p <= 0.04045 ? p / 12.92 : Math.Pow((p + 0.055) / 1.055, 2.4);
        var light = 0.2126 * Linear(colour.Red) + 0.7152 * Linear(colour.Green) + 0.0722 * Linear(colour.Blue);
        return light > 0.008856 ? 116 * Math.Cbrt(light) - 16 : 903.3 * light;
    }

    private static Bounds Room(PictureText text)
    {
        var width = Letters.Width(text.Text) * text.Height;
        var left = text.Place.X - text.Align switch { TextAlign.Middle => width / 2, TextAlign.End => width, _ => 0 };
        return new(left, text.Place.Y, left + width, text.Place.Y + text.Height);
    }

    private static double Area(PictureShape shape) => shape.Paths.Sum(p => p.Segments.Sum(s => s.AreaShare));

    private static Bounds Extent(PictureShape shape) =>
        shape.Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds));

    /// <summary>A flat sheet of 100 x 100 mm in 200 triangles.</summary>
    internal static FormedPart Sheet(Func<Vec2, double> thickness)
    {
        var points = Enumerable.Range(0, 121).Select(i => new Vec2(i % 11 * 10, i / 11 * 10)).ToArray();
        return new()
        {
            Spec = new(),
            Gauge = 1,
            FrameHeight = 0,
            Thinnest = null,
            ThinnestOfSheet = null,
            MeanThickness = 1,
            MeanThicknessOfSheet = 1,
            VolumeError = 0,
            Bridged = [],
            Webs = [],
            IsConverged = true,
            MinEdgeLength = 10,
            BallRadius = 2,
            Modulus = new(0.1, 0.1),
            Points = [.. points.Select(p => new FormedPoint(p.X, p.Y, 0, thickness(p), -1))],
            Triangles = [.. Enumerable.Range(0, 110).Where(i => i % 11 < 10)
                .SelectMany(i => (FormedTriangle[])[new(i, i + 1, i + 12, 1, 1), new(i, i + 12, i + 11, 1, 1)])],
        };
    }
}
