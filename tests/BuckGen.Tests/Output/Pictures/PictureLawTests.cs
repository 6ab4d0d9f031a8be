using System.Globalization;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Prediction;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Pictures;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Output.Pictures.Png;
using BuckGen.Output.Pictures.Thickness;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

/// <summary>What every picture of a job keeps, whatever it shows.</summary>
public class PictureLawTests
{
    private const double Near = 1e-6;

    private static readonly Finding Placed =
        new("test", Severity.Note, "message", "remedy") { Place = new(3, 3), Number = 1 };

    [Theory]
    [InlineData(60, 40)]
    [InlineData(9, 300)]
    [InlineData(900, 12)]
    public void All_that_is_drawn_is_on_its_page_and_no_two_lines_of_text_meet(double width, double height)
    {
        var design = PlainBuck
            .Create(Shapes.Rectangle(width, height), PlainBuck.Spec with { Depth = 12, Base = new(PlainBuck.Mdf12) });
        var plan = CutPlan.Create(design, new());

        Assert.All((Picture[])[PlanPicture.Draw(design, [Placed, Placed with { Number = 2 }]), SectionPicture.Draw(design)!,
            StackPicture.Draw("Apart", design.Layers)!, .. design.Layers.Select(CutPicture.Draw),
            .. plan.Boards.Select(CutPicture.Draw), PreviewPicture.Draw(design, new('W', 150), [Placed])], picture =>
        {
            var texts = Items(picture.Items).OfType<PictureText>().ToArray();
            Assert.NotEmpty(texts);
            Assert.All(texts, t => Assert.True(picture.Page.Contains(Room(t)), $"{picture.Title}: {t} of {picture.Page}"));
            Assert.All(Items(picture.Items).OfType<PictureShape>(),
                s => Assert.True(picture.Page.Contains(Extent(s)), $"{picture.Title}: {Extent(s)} of {picture.Page}"));
            foreach (var (one, i) in texts.Select((t, i) => (t, i)))
                Assert.All(texts[(i + 1)..], t => Assert.False(Room(one).Grown(-0.1).Intersects(Room(t).Grown(-0.1)),
                    $"{picture.Title}: {one.Text} and {t.Text}"));
        });
    }

    [Fact]
    public void The_preview_shows_each_drawing_whole_under_the_title_and_apart_from_the_others()
    {
        var design = PictureGoldenTests.Raised.Value;
        var preview = PreviewPicture.Draw(design, "A tray", [Placed]);
        Picture[] drawings = [PlanPicture.Draw(design, [Placed]), SectionPicture.Draw(design)!,
            StackPicture.Draw("Apart", design.Layers)!];

        var items = preview.Items.RemoveAt(0);
        Assert.Equal(drawings.Sum(d => d.Items.Length), items.Length);
        var pages = new List<Bounds>();
        foreach (var drawing in drawings)
        {
            var moved = items[..drawing.Items.Length];
            items = items.RemoveRange(0, drawing.Items.Length);
            var by = Items(moved).OfType<PictureText>().First().Place - Items(drawing.Items).OfType<PictureText>().First().Place;
            Assert.All(Items(moved).Zip(Items(drawing.Items)),
                p => Assert.True(Extent(p.First).LowerLeft.DistanceTo(Extent(p.Second).LowerLeft + by) < Near));
            pages.Add(Bounds.FromCorners(drawing.Page.LowerLeft + by,
                new Vec2(drawing.Page.MaxX, drawing.Page.MaxY) + by));
        }

        var title = Room((PictureText)preview.Items[0]);
        Assert.All(pages, p => Assert.True(preview.Page.Grown(Near).Contains(p) && p.MaxY < title.MinY, $"{p}"));
        Assert.All(pages.Index(),
            p => Assert.All(pages[(p.Index + 1)..], o => Assert.False(p.Item.Intersects(o), $"{p.Item} and {o}")));
    }

    [Fact]
    public void A_long_title_of_the_preview_fills_the_page_between_two_equal_margins()
    {
        var preview = PreviewPicture.Draw(PictureGoldenTests.Raised.Value, new('W', 150), []);

        var title = Room((PictureText)preview.Items[0]);
        Assert.Equal(title.MinX - preview.Page.MinX, preview.Page.MaxX - title.MaxX, Near);
    }

    [Fact]
    public void Vents_and_dowels_of_the_plan_are_as_wide_as_they_are_drilled()
    {
        var design = PictureGoldenTests.Raised.Value;
        var plan = PlanPicture.Draw(design, []);

        // 60 mm are drawn at 1:1 or larger, so that no vent falls below the smallest dot.
        var scale = Scale(plan);
        Assert.InRange(scale, 1, 2);
        var drawn = Circles(plan).Select(c => Math.Round(2 * c.Radius / scale, 3)).Order();
        var drilled = design.Vents!.Vents.Select(v => v.Diameter)
            .Concat(design.Layers.SelectMany(l => l.Parts).SelectMany(p => p.Dowels).Distinct().Select(d => d.Diameter))
            .Select(d => Math.Round(d, 3)).Order();
        Assert.NotEmpty(drilled);
        Assert.Equal(drilled, drawn);
    }

    /// <summary>As someone would with a ruler: by the two ends of the scales, which are read first.</summary>
    [Fact]
    public void What_is_read_off_the_curve_of_thickness_is_the_thickness()
    {
        var part = ThicknessTests.Sheet(p => 0.2 + 0.8 * Math.Pow(p.X / 100, 2));
        var design = PictureGoldenTests.Raised.Value with { Formed = part };
        var picture = ThicknessSection.Draw(design)!;

        var texts = picture.Items.OfType<PictureText>().ToArray();
        var up = texts.Where(t => t.Align == TextAlign.End && !t.Text.StartsWith("Scale", StringComparison.Ordinal))
            .Select(t => (Value: Number(t), At: t.Place.Y + 1)).ToArray();
        var across = texts.Where(t => t.Align == TextAlign.Middle && double.TryParse(t.Text, CultureInfo.InvariantCulture, out _)
            && t.Place.Y > 20).Select(t => (Value: Number(t), At: t.Place.X)).ToArray();
        Assert.InRange(up.Length, 3, 10);
        Assert.InRange(across.Length, 3, 10);
        var curve = Assert.Single(picture.Items.OfType<PictureShape>(), s => s.Ink.Stroke == PictureColours.Measure);
        var line = SheetSection.AtY(part, SectionPicture.CutAt(design)!.Value)[0];
        Vec2[] corners = [curve.Paths[0].Segments[0].Start, .. curve.Paths[0].Segments.Select(s => s.End)];
        Assert.Equal(line.Length, corners.Length);
        Assert.All(line.Zip(corners), p =>
        {
            Assert.Equal(p.First.ArcLength, Read(across, p.Second.X), Near);
            Assert.Equal(p.First.Thickness, Read(up, p.Second.Y), Near);
        });
        // A line of the grid stands at each number of the upright scale.
        Assert.All(up, u => Assert.Contains(picture.Items.OfType<PictureShape>(), s => !s.Ink.Dashes.IsEmpty
            && Math.Abs(Extent(s).MinY - u.At) < Near && Extent(s).Height < Near));

        static double Read((double Value, double At)[] marks, double at) => marks[0].Value
            + (at - marks[0].At) / (marks[^1].At - marks[0].At) * (marks[^1].Value - marks[0].Value);
    }

    /// <summary>The colours follow the sheet without a gap, in the order of its thickness.</summary>
    [Fact]
    public void The_sheet_in_the_section_has_the_colours_of_its_thickness_from_end_to_end()
    {
        var part = ThicknessTests.Sheet(p => 0.2 + 0.8 * p.X / 100);
        var design = PictureGoldenTests.Raised.Value with { Formed = part };

        var ways = ThicknessSection.Draw(design)!.Items.OfType<PictureShape>()
            .Where(s => s.Ink is { Fill: null, Width: 1 or 1.5 }).ToArray();

        Assert.Equal(1.5, ways[0].Ink.Width);
        Assert.Equal(ways[0].Paths[0].Segments, ways[1..].SelectMany(w => w.Paths[0].Segments));
        Assert.Equal(Enumerable.Range(0, ThicknessColours.Count).Select(ThicknessColours.ForBand),
            ways[1..].Select(w => w.Ink.Stroke));
    }

    [Fact]
    public void A_prediction_that_did_not_converge_is_not_drawn()
    {
        var design = PictureGoldenTests.Raised.Value with { Formed = ThicknessTests.Sheet(_ => 1) with { IsConverged = false } };

        Assert.Null(ThicknessMap.Draw(design));
        Assert.Null(ThicknessSection.Draw(design));
    }

    [Fact]
    public void A_label_stands_on_its_white_ground_beside_its_ring()
    {
        var places = new NumberedPlaces();
        for (var i = 1; i <= 12; i++) places.Add(new(i % 4 * 2.5, i / 4 * 2.5), NumberedPlaces.Label(i), PictureColours.Repaired);

        var (items, labels) = (places.Items, 0);
        for (var i = 1; i < items.Length; i++)
            if (items[i] is PictureText label)
            {
                labels++;
                var (ground, ring) = (Extent(items[i - 1]), Extent(items[i - 2]));
                Assert.True(ground.Grown(0.1).Contains(Room(label)), $"{label} on {ground}");
                var nearest = new Vec2(Math.Clamp(ring.Centre.X, ground.MinX, ground.MaxX),
                    Math.Clamp(ring.Centre.Y, ground.MinY, ground.MaxY));
                Assert.InRange(nearest.DistanceTo(ring.Centre), ring.Width / 2 - 0.1, ring.Width / 2 + 1.5);
            }

        Assert.InRange(labels, 8, 12);
    }

    /// <summary>All items, those within links too.</summary>
    private static IEnumerable<PictureItem> Items(IEnumerable<PictureItem> items) =>
        items.SelectMany(i => i is PictureLink link ? Items(link.Items) : [i]);

    private static Bounds Extent(PictureItem item) => item is PictureText text ? Room(text)
        : ((PictureShape)item).Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds));

    private static Bounds Room(PictureText text)
    {
        var width = Letters.Width(text.Text) * text.Height;
        var left = text.Align switch { TextAlign.Middle => -width / 2, TextAlign.End => -width, _ => 0 };
        return ((Vec2[])[new(left, 0), new(left + width, 0), new(left, 0.7 * text.Height), new(left + width, 0.7 * text.Height)])
            .Select(p => text.Place + p.Turned(text.Turn * Math.PI / 180)).Aggregate(Bounds.Nothing, (b, p) => b.With(p));
    }

    private static double Number(PictureText text) => double.Parse(text.Text, CultureInfo.InvariantCulture);

    private static double Scale(Picture picture)
    {
        var words = picture.Items.OfType<PictureText>().Single(t => t.Text.StartsWith("Scale ", StringComparison.Ordinal))
            .Text[6..].Split(':');
        return double.Parse(words[0], CultureInfo.InvariantCulture) / double.Parse(words[1], CultureInfo.InvariantCulture);
    }

    private static IEnumerable<(Vec2 Centre, double Radius)> Circles(Picture picture) => picture.Items.OfType<PictureShape>()
        .Where(s => s.Paths is [{ Closed: true }]).Select(s => Loop.FromSegments(s.Paths[0].Segments).AsCircle(1e-9))
        .Where(c => c is not null).Select(c => (c!.Value.Centre, c.Value.Radius));
}
