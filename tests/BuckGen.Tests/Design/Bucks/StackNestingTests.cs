using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Design.Offsets;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>No layer of wood reaches beyond the one below it.</summary>
[Trait("Tier", "slow")]
public class StackNestingTests
{
    private static readonly Region Plate = Shapes.Rectangle(100, 60);

    private static readonly Region Petals =
        OutlineReader.Read(Corpus.File("svg/h_petals_stop_short.svg").Content, "petals.svg").Region;

    [Fact]
    public void Layers_one_inside_the_other_are_let_through() =>
        StackNesting.Require(
            [Wall(1, Plate), Wall(2, Shapes.RectangleAt(1, 1, 98, 58)), Wall(3, Shapes.RectangleAt(1, 1, 98, 58))], 5,
            Tolerance.Default);

    [Fact]
    public void An_island_over_air_is_refused_with_its_height_and_place()
    {
        var ring = Region.FromLoops([Loop.Rectangle(new(0, 0, 100, 60)), Loop.Rectangle(new(30, 20, 70, 40))]);
        var phantom = Shapes.Union(ring, Shapes.RectangleAt(45, 25, 10, 10));

        var message =
            Assert.Throws<OffsetFailedException>(() =>
                StackNesting.Require([Wall(1, ring), Wall(2, phantom)], 5, Tolerance.Default)).Message;

        Assert.StartsWith("at a height of 4 mm layer 2 reaches beyond layer 1 at (45.000, 25.000)", message);
        Assert.Contains("redraw", message);
    }

    [Fact]
    public void Where_the_walls_lean_the_wrong_way_the_upper_layer_is_the_larger()
    {
        LayerBlank[] widening = [Wall(1, Shapes.RectangleAt(1, 1, 98, 58)), Wall(2, Plate)];

        StackNesting.Require(widening, -5, Tolerance.Default);
        Assert.Contains("layer 2 reaches beyond layer 1",
            Assert.Throws<OffsetFailedException>(() => StackNesting.Require(widening, 5, Tolerance.Default)).Message);
        Assert.Contains("layer 1 reaches beyond layer 2", Assert.Throws<OffsetFailedException>(
            () =>
                StackNesting.Require([Wall(1, Plate), Wall(2, Shapes.RectangleAt(1, 1, 98, 58))], -5,
                    Tolerance.Default)).Message);
    }

    [Fact]
    public void A_hole_under_wood_is_refused()
    {
        var holed = Region.FromLoops([Loop.Rectangle(new(0, 0, 100, 60)), Loop.Circle(new(50, 30), 5)]);

        var message =
            Assert.Throws<OffsetFailedException>(() =>
                StackNesting.Require([Wall(1, holed), Wall(2, Plate)], 5, Tolerance.Default)).Message;

        Assert.Contains("layer 2 reaches beyond layer 1 at (45.000, 30.000)", message);
    }

    [Theory]
    [InlineData(0.019, true)]
    [InlineData(0.021, false)]
    public void Each_outline_may_deviate_by_the_chord_error(double beyond, bool passes)
    {
        var wider = Loop.Rectangle(new(0, 0, 100 + beyond, 60));
        LayerBlank[] layers = [Wall(1, Plate), Wall(2, Region.FromLoops([wider]))];

        if (passes) StackNesting.Require(layers, 5, Tolerance.Default);
        else Assert.Throws<OffsetFailedException>(() => StackNesting.Require(layers, 5, Tolerance.Default));
    }

    [Fact]
    public void The_middle_of_a_bulging_edge_counts_as_well()
    {
        var bulging =
            Region.FromLoops([Loop.FromCorners([(new(0, 0), 0.01), (new(100, 0), 0), (new(100, 60), 0), (new(0, 60), 0)])]);

        Assert.Throws<OffsetFailedException>(() =>
            StackNesting.Require([Wall(1, Plate), Wall(2, bulging)], 5, Tolerance.Default));
    }

    [Fact]
    public void A_plate_under_the_stack_may_be_narrower() =>
        StackNesting.Require([Wall(1, Shapes.Rectangle(50, 50)) with { Role = LayerRole.Base }, Wall(2, Plate)], 5,
            Tolerance.Default);

    [Theory]
    [InlineData(Steps.Outside)]
    [InlineData(Steps.Middle)]
    [InlineData(Steps.Inside)]
    public void Petals_round_empty_air_leave_the_air_empty(Steps steps)
    {
        var spec = PlainBuck.Spec with
        {
            Depth = 24,
            Draft = 15.58,
            OutlineAt = OutlineAt.Base,
            Steps = steps,
            Stock = [new("board", 4)]
        };

        var design = PlainBuck.Create(Petals, spec);

        Assert.Equal(6, design.Layers.Length);
        Assert.All(design.Layers, l => Assert.InRange(l.Region.Islands.Length, 1, 6));
        Assert.All(design.Layers, l => Assert.All(l.Region.Islands, i => Assert.True(Petals.Contains(InsidePoint.Find(i)))));
        // Petals 16 mm wide, less 5.019 mm on each side in the fifth layer and 6.134 mm in the sixth (trigonometry).
        if (steps == Steps.Middle) Assert.All(design.Layers, l => Assert.Equal(6, l.Region.Islands.Length));
    }

    [Theory]
    [InlineData(BuckKind.Male, OutlineAt.Base)]
    [InlineData(BuckKind.Male, OutlineAt.Face)]
    [InlineData(BuckKind.Female, OutlineAt.Base)]
    [InlineData(BuckKind.Female, OutlineAt.Face)]
    public void Flawed_outlines_stack_like_any_others(BuckKind kind, OutlineAt at)
    {
        Region[] clean = [Shapes.Rectangle(100, 60), Shapes.Ring(40, 15), Shapes.Slot(60, 20), Shapes.Counter(60, 80, 20, 40)];
        for (var i = 0; i < 12; i++)
        {
            var corners = i % 2 == 0 ? CornerJoin.Round : CornerJoin.Mitre;
            var spec = PlainBuck.Spec with { Kind = kind, OutlineAt = at, Corners = corners };

            var layers = PlainBuck.Create(TinyFlaws.Sprinkled(clean[i % clean.Length], i), spec).Layers;

            Assert.Equal(3, layers.Length);
            for (var n = 1; n < layers.Length; n++) AssertInside(layers[n - 1].Region, layers[n].Region);
        }
    }

    /// <summary>By area and by points beside the edges, with no more than containment.</summary>
    private static void AssertInside(Region lower, Region upper)
    {
        Assert.True(upper.Area < lower.Area);
        foreach (var s in upper.Segments)
            if (s.Length > 0.1 && s.PointAt(0.5) + s.DirectionAt(0.5).Left * 0.03 is var p)
                Assert.True(lower.Contains(p), $"{p}");
    }

    private static LayerBlank Wall(int number, Region wood) =>
        new(number, LayerRole.Wall, new("board", 4), 4 * (number - 1), 4 * number, wood);
}
