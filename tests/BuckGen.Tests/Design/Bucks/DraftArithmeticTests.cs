using BuckGen.Design.Bucks;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>Sizes of layers computed by hand: a wall stands at h·tan(draft) from the outline. Source: trigonometry.</summary>
public class DraftArithmeticTests
{
    // 12, 24 and 36 times tan 5° = 0.0874887.
    private const double D12 = 1.04986, D24 = 2.09973, D36 = 3.14959;

    [Theory]
    [InlineData(OutlineAt.Face, Steps.Outside, D36, D24, D12)]
    [InlineData(OutlineAt.Face, Steps.Inside, D24, D12, 0.0)]
    [InlineData(OutlineAt.Face, Steps.Middle, 2.62466, 1.57480, 0.52493)]
    [InlineData(OutlineAt.Base, Steps.Outside, 0.0, -D12, -D24)]
    [InlineData(OutlineAt.Base, Steps.Inside, -D12, -D24, -D36)]
    [InlineData(OutlineAt.Base, Steps.Middle, -0.52493, -1.57480, -2.62466)]
    public void A_rectangle_on_a_male_buck(OutlineAt at, Steps steps, params double[] offsets)
    {
        var design =
            PlainBuck.Create(Shapes.Rectangle(100, 60),
                PlainBuck.Spec with { OutlineAt = at, Steps = steps, Corners = CornerJoin.Mitre });

        Assert.Equal(3, design.Layers.Length);
        for (var i = 0; i < 3; i++)
        {
            Assert.Equal(100 + 2 * offsets[i], design.Layers[i].Region.Bounds.Width, 1e-4);
            Assert.Equal(60 + 2 * offsets[i], design.Layers[i].Region.Bounds.Height, 1e-4);
            Assert.Equal((100 + 2 * offsets[i]) * (60 + 2 * offsets[i]), design.Layers[i].Region.Area, 0.02);
        }
    }

    [Theory]
    [InlineData(OutlineAt.Face, Steps.Outside, -D36, -D24, -D12)]
    [InlineData(OutlineAt.Face, Steps.Inside, -D24, -D12, 0.0)]
    [InlineData(OutlineAt.Base, Steps.Outside, 0.0, D12, D24)]
    [InlineData(OutlineAt.Base, Steps.Inside, D12, D24, D36)]
    [InlineData(OutlineAt.Base, Steps.Middle, 0.52493, 1.57480, 2.62466)]
    public void A_rectangle_as_a_cavity(OutlineAt at, Steps steps, params double[] offsets)
    {
        var spec = PlainBuck.Spec with
        {
            Kind = BuckKind.Female,
            OutlineAt = at,
            Steps = steps,
            Corners = CornerJoin.Mitre,
            BlockMargin = 30
        };

        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), spec);

        var rim = at == OutlineAt.Face ? 0 : D36;
        for (var i = 0; i < 3; i++)
        {
            var cavity = Assert.Single(Assert.Single(design.Layers[i].Region.Islands).Holes);
            Assert.Equal(100 + 2 * offsets[i], cavity.Bounds.Width, 1e-4);
            Assert.Equal(60 + 2 * offsets[i], cavity.Bounds.Height, 1e-4);
            // The block is upright: the rim and its margin in every layer.
            Assert.Equal(160 + 2 * rim, design.Layers[i].Region.Bounds.Width, 1e-4);
        }
    }

    [Theory]
    [InlineData(BuckKind.Male, Steps.Outside, 0.0)]
    [InlineData(BuckKind.Male, Steps.Inside, -D12)]
    [InlineData(BuckKind.Female, Steps.Outside, 0.0)]
    [InlineData(BuckKind.Female, Steps.Inside, D12)]
    public void A_wall_that_leans_the_wrong_way_is_still_cut_proud_of_itself_or_behind(BuckKind kind, Steps steps, double top)
    {
        var spec = PlainBuck.Spec with { Kind = kind, Draft = -5, Steps = steps, Corners = CornerJoin.Mitre };

        var wood = PlainBuck.Create(Shapes.Rectangle(100, 60), spec).Layers[^1].Region.Islands[0];

        var outline = kind == BuckKind.Male ? wood.Outer : wood.Holes[0];
        Assert.Equal(100 + 2 * top, outline.Bounds.Width, 1e-4);
    }

    [Fact]
    public void Round_corners_of_the_drafted_rectangle_have_the_offset_as_radius()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60));

        Assert.Equal(6000 + 320 * D36 + Math.PI * D36 * D36, design.Layers[0].Region.Area, 0.01);
        var arcs = design.Layers[0].Region.Segments.Where(s => s.IsArc).ToArray();
        Assert.Equal(4, arcs.Length);
        Assert.All(arcs, a => Assert.Equal(D36, a.Radius, 1e-4));
    }

    [Fact]
    public void A_disc_is_a_circle_in_every_layer()
    {
        var design = PlainBuck.Create(Shapes.Disc(50));

        double[] radii = [50 + D36, 50 + D24, 50 + D12];
        for (var i = 0; i < 3; i++)
            Assert.Equal(radii[i], design.Layers[i].Region.OnlyLoop().AsCircle(1e-6)!.Value.Radius, 1e-4);
    }

    [Fact]
    public void A_ring_grows_outside_and_its_hole_shrinks()
    {
        var design = PlainBuck.Create(Shapes.Ring(40, 20));

        Assert.Equal(Math.PI * (Math.Pow(40 + D36, 2) - Math.Pow(20 - D36, 2)), design.Layers[0].Region.Area, 0.01);
        Assert.Equal(Math.PI * (Math.Pow(40 + D12, 2) - Math.Pow(20 - D12, 2)), design.Layers[2].Region.Area, 0.01);
    }

    [Fact]
    public void A_letter_loses_its_counter_in_the_layers_below_the_height_where_it_closes()
    {
        // The counter is 5 mm wide: it closes 2.5/tan 5° = 28.58 mm below the face, 7.42 mm above the bottom of 36 mm.
        var design = PlainBuck.Create(Shapes.Counter(60, 80, 5, 40));

        Assert.Equal([0, 1, 1], design.Layers.Select(l => l.Region.HoleCount));
        var closing = Assert.Single(design.Named("counter-closes"));
        Assert.Equal(36 - 2.5 / PlainBuck.Tan5, closing.Height!.Value, 0.05);
        Assert.Equal(0, closing.Place!.Value.DistanceTo(new(30, 40)), 0.1);
    }

    [Theory]
    [InlineData(3, 3, 0.157)]
    [InlineData(3, 5, 0.262)]
    [InlineData(6, 3, 0.314)]
    [InlineData(6, 5, 0.525)]
    [InlineData(12, 5, 1.050)]
    public void Each_layer_steps_by_its_thickness_times_the_tangent(double thickness, double draft, double step)
    {
        // Trigonometry: t·tan(draft), rounded to a micrometre.
        var design = PlainBuck.Create(
            Shapes.Rectangle(100, 60),
            PlainBuck.Spec with { Depth = 4 * thickness, Draft = draft, Stock = [new("board", thickness)] });

        var widths = design.Widths();
        Assert.Equal(4, widths.Length);
        for (var i = 0; i + 1 < widths.Length; i++) Assert.Equal(step, (widths[i] - widths[i + 1]) / 2, 0.0006);
    }

    [Theory]
    [InlineData(0.5, 301.508)]
    [InlineData(2, 306.122)]
    public void The_buck_is_larger_by_what_the_plastic_shrinks(double shrinkage, double width)
    {
        // 300 mm of cooled part need 300/(1 - s) mm of mould: the definition of shrinkage.
        var design = PlainBuck.Create(Shapes.Rectangle(300, 100), PlainBuck.Spec with { Draft = 0, Shrinkage = shrinkage });

        Assert.All(design.Widths(), w => Assert.Equal(width, w, 0.001));
    }

    [Fact]
    public void Walls_without_draft_are_upright()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Draft = 0 });

        Assert.All(design.Layers, l => Assert.Equal(6000, l.Region.Area, 1e-6));
        Assert.All(design.Layers, l => Assert.Empty(l.SandTo));
        Assert.All(design.Layers, l => Assert.Empty(l.GlueUp));
    }

    [Theory]
    [InlineData(BuckKind.Male, OutlineAt.Face, D36)]
    [InlineData(BuckKind.Male, OutlineAt.Base, 0)]
    [InlineData(BuckKind.Female, OutlineAt.Face, 0)]
    [InlineData(BuckKind.Female, OutlineAt.Base, D36)]
    public void The_footprint_is_where_the_wall_meets_the_flange(BuckKind kind, OutlineAt at, double offset)
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Kind = kind, OutlineAt = at });

        Assert.Equal(100 + 2 * offset, design.Footprint.Bounds.Width, 1e-4);
    }

    [Fact]
    public void The_depth_that_results_not_the_depth_wanted_sets_the_draft()
    {
        // 35.8 mm wanted, 36 mm of boards: the face stands at 36 mm and the outline is to size there.
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Depth = 35.8 });

        Assert.Equal(100 + 2 * D36, design.Widths()[0], 1e-4);
    }
}
