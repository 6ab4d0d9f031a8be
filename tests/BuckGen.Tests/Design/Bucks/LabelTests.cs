using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Lettering;
using BuckGen.Geometry.Tests;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

public class LabelTests
{
    [Fact]
    public void Each_piece_is_lettered_with_its_layer_and_its_island()
    {
        var design = PlainBuck.Create(Shapes.Union(Shapes.Rectangle(60, 60), Shapes.RectangleAt(100, 0, 60, 60)));

        // On the third layer the sheet would show it.
        Assert.Equal(["1A", "1B", "2A", "2B", null, null], design.Layers.SelectMany(l => l.Parts).Select(p => p.Label?.Text));
    }

    [Fact]
    public void Letters_run_from_left_to_right_and_stay_with_their_island()
    {
        var design = PlainBuck.Create(Shapes.Union(
            Shapes.RectangleAt(140, 0, 40, 40), Shapes.RectangleAt(0, 0, 60, 60), Shapes.RectangleAt(70, 0, 50, 50)));

        foreach (var layer in design.Layers)
        {
            Assert.Equal(["A", "B", "C"], layer.Parts.Select(p => p.Letter));
            Assert.Equal([0, 1, 2], layer.Parts.Select(p => p.Shape.Outer.Bounds.Centre.X)
                .Select(x => x < 60 ? 0 : x < 130 ? 1 : 2));
        }
    }

    [Fact]
    public void Upright_walls_keep_their_letter()
    {
        // Outlines of layers without draft are the same: their edges lie on each other.
        var design =
            PlainBuck.Create(Shapes.Union(Shapes.Disc(40), Shapes.Slot(40, 15).Moved(80, 0)), PlainBuck.Spec with { Draft = 0 });

        Assert.All(design.Layers, l => Assert.Equal(["A", "B"], l.Parts.Select(p => p.Letter)));
    }

    [Fact]
    public void An_island_that_ends_lower_down_keeps_the_next_letter()
    {
        // To size at the base the 5 mm strip is gone 2.5/tan 5° = 28.6 mm up: it is in the two lower layers' steps and in the
        // third.
        var design = PlainBuck.Create(
            Shapes.Union(Shapes.Rectangle(60, 60), Shapes.RectangleAt(80, 0, 3, 60)),
            PlainBuck.Spec with { OutlineAt = OutlineAt.Base });

        Assert.Equal([2, 2, 1], design.Layers.Select(l => l.Parts.Length));
        Assert.All(design.Layers, l => Assert.Equal("A", l.Parts.Single(p => p.Shape.Outer.Bounds.MinX < 10).Letter));
        Assert.All(design.Layers.Take(2), l => Assert.Equal("B", l.Parts.Single(p => p.Shape.Outer.Bounds.MinX > 70).Letter));
    }

    [Fact]
    public void Islands_that_merge_go_on_under_the_first_letter()
    {
        var design =
            PlainBuck.Create(Shapes.Union(Shapes.Rectangle(60, 60), Shapes.RectangleAt(63, 0, 60, 60)),
                PlainBuck.Spec with { Steps = Steps.Inside });

        Assert.Equal(["A"], design.Layers[0].Parts.Select(p => p.Letter));
        Assert.Equal(["A", "B"], design.Layers[2].Parts.Select(p => p.Letter));
    }

    [Fact]
    public void Lettering_lies_in_the_wood_and_clear_of_every_line() =>
        Gen.Select(RandomRegion.Islands, Gen.Enum<Steps>(), Gen.Enum<BuckKind>()).Sample((region, steps, kind) =>
        {
            var design = PlainBuck.Create(region, PlainBuck.Spec with { Steps = steps, Kind = kind });

            Assert.Contains(design.Layers.SelectMany(l => l.Parts), p => p.Label is not null);
            foreach (var layer in design.Layers) AssertClear(layer);
        }, iter: 60);

    [Fact]
    public void Lettering_is_hidden_under_the_layer_above_where_it_can_be()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60));

        for (var i = 0; i + 1 < design.Layers.Length; i++)
            Assert.All(Points(design.Layers[i].Parts[0].Label!), p => Assert.True(design.Layers[i + 1].Region.Contains(p)));
    }

    [Fact]
    public void Smaller_letters_serve_where_the_wanted_ones_do_not_fit()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 7), PlainBuck.Spec with { Draft = 0 });

        var label = design.Layers[0].Parts[0].Label!;
        Assert.InRange(label.Box.Height, LabelPlacement.MinHeight, 7 - 2 * LabelPlacement.Clearance);
    }

    [Fact]
    public void A_tall_narrow_piece_is_lettered_along_its_length()
    {
        var label = PlainBuck.Create(Shapes.Rectangle(8, 100), PlainBuck.Spec with { Draft = 0 }).Layers[0].Parts[0].Label!;

        Assert.True(label.Box.Height > label.Box.Width);
        Assert.All(Points(label), p => Assert.True(label.Box.Grown(0.01).Contains(p)));
    }

    [Fact]
    public void Lettering_that_fits_nowhere_is_left_off_and_reported()
    {
        var design = PlainBuck.Create(Shapes.Disc(2), PlainBuck.Spec with { Draft = 0.1 });

        Assert.All(design.Layers, l => Assert.Null(l.Parts[0].Label));
        var finding = Assert.Single(design.Named("label-no-room"));
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("1A, 2A", finding.Message);
    }

    [Fact]
    public void The_twenty_seventh_island_is_called_AA()
    {
        var many = Shapes.Union([.. Enumerable.Range(0, 28).Select(i => Shapes.RectangleAt(40 * i, 0, 30, 30))]);

        var letters = PlainBuck.Create(many, PlainBuck.Spec with { Draft = 0 }).Layers[0].Parts.Select(p => p.Letter).ToArray();

        Assert.Equal(["Z", "AA", "AB"], letters[25..]);
    }

    private static void AssertClear(Layer layer)
    {
        foreach (var part in layer.Parts)
        {
            if (part.Label is not { } label) continue;
            var lines = layer.SandTo.Concat(layer.GlueUp).Concat(part.Dowels.Select(d => Loop.Circle(d.Centre, d.Diameter / 2)))
                .Concat(part.Shape.Loops).ToArray();
            foreach (var p in Points(label))
            {
                Assert.True(part.Shape.Contains(p), $"{label.Text}: {p} is outside");
                // The clear space is checked in steps of half its width.
                Assert.All(lines, l => Assert.True(l.DistanceTo(p) >= LabelPlacement.Clearance / 2, $"{label.Text}: {p}"));
            }
        }
    }

    private static IEnumerable<Vec2> Points(Label label) => label.Strokes.SelectMany(Points);

    private static IEnumerable<Vec2> Points(Stroke stroke)
    {
        var v = stroke.Vertices;
        for (var i = 0; i + 1 < v.Length; i++)
        {
            var piece = new Segment(new(v[i].X, v[i].Y), new(v[i + 1].X, v[i + 1].Y), v[i].Bulge);
            for (var k = 0; k <= 8; k++) yield return piece.PointAt(k / 8.0);
        }
    }
}
