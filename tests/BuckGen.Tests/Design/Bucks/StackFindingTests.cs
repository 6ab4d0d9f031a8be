using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>What is reported about dowels and lettering names piece, place, value and remedy.</summary>
public class StackFindingTests
{
    [Fact]
    public void An_island_too_small_for_two_dowels()
    {
        // The lowest piece counts from which no dowel goes on: at the top 20 mm wide, lower down more.
        var finding =
            Assert.Single(
                PlainBuck.Create(Shapes.Union(Shapes.Rectangle(60, 60), Shapes.DiscAt(90, 30, 10)),
                    PlainBuck.Spec with { Draft = 0 }).Named("dowels-no-room"));
        Assert.Equal("From layer 2 up, island B is too small for two 6 mm dowels with 4 mm of wood round them.", finding.Message);
        Assert.Equal("Use thinner dowels or less wall, or glue these pieces by eye along the glue-up lines.", finding.Remedy);
        Assert.Equal((Severity.Warning, 12, 6, "common practice, no source"),
            (finding.Severity, finding.Height, finding.Value, finding.Source));
        Assert.Equal(0, finding.Place!.Value.DistanceTo(new(90, 30)), 1e-6);
    }

    /// <summary>
    /// Found by random designs: walls that lean the wrong way grow together on top, where the dowels are chosen. At 12 mm each
    /// square stands out by 12·tan 5° = 1.05 mm (trigonometry), which closes the gap of 1 mm; its lower half may get one dowel of
    /// the three.
    /// </summary>
    [Fact]
    public void A_piece_with_one_dowel()
    {
        var design = PlainBuck.Create(
            Shapes.Union(Shapes.Rectangle(30, 30), Shapes.RectangleAt(31, 0, 30, 30)),
            PlainBuck.Spec with
            {
                Depth = 24,
                Draft = -5,
                OutlineAt = OutlineAt.Base,
                Steps = Steps.Inside,
                Base = new(PlainBuck.Mdf12)
            });
        Assert.Equal([1, 2, 1], design.Layers.Select(l => l.Parts.Length));
        Assert.Equal([1, 2], design.Layers[1].Parts.Select(p => p.Dowels.Length).Order());

        var finding = Assert.Single(design.Named("dowel-alone"));
        var alone = design.Layers[1].Parts.Single(p => p.Dowels.Length == 1);
        Assert.Equal(
            $"Island {alone.Letter} of layer 2 has only one dowel, about which it can turn: the others of the layer above "
            + "stand beside it.", finding.Message);
        Assert.Equal("Let the walls lean the other way, or glue this piece by eye along the glue-up lines.", finding.Remedy);
        Assert.Equal((Severity.Warning, 12, 1, 2, "common practice, no source"),
            (finding.Severity, finding.Height, finding.Value, finding.Limit, finding.Source));
        Assert.Equal(0, finding.Place!.Value.DistanceTo(alone.Shape.Outer.Bounds.Centre), 1e-9);
    }

    [Fact]
    public void A_piece_that_fits_turned()
    {
        var design = PlainBuck.Create(Shapes.Rectangle(80, 16));
        var finding = Assert.Single(design.Named("dowels-turnable"));
        Assert.Equal("The two dowels of island A also fit turned or flipped, and its outline would not show it.",
            finding.Message);
        Assert.Equal("Glue with all numbers facing up and reading the same way; thinner dowels would leave room for a third.",
            finding.Remedy);
        Assert.Equal((24, "common practice, no source"), (finding.Height, finding.Source));
        Assert.Contains(finding.Place!.Value, design.Layers[1].Parts[0].Dowels.Select(d => d.Centre));
    }

    [Fact]
    public void Lettering_left_off()
    {
        var finding =
            Assert.Single(PlainBuck.Create(Shapes.DiscAt(7, 8, 2), PlainBuck.Spec with { Draft = 0 }).Named("label-no-room"));
        Assert.Equal("The lettering of 2 pieces does not fit on them, even 2.5 mm high; it is left off: 1A, 2A.",
            finding.Message);
        Assert.Equal((12, "Pencil the number on the piece when it comes off the machine."), (finding.Height, finding.Remedy));
        Assert.Equal(0, finding.Place!.Value.DistanceTo(new(7, 8)), 1e-6);
    }

    [Fact]
    public void Lettering_left_off_one_piece() => Assert.Equal(
        "The lettering 1A does not fit on its piece, even 2.5 mm high; it is left off.",
        Assert.Single(PlainBuck.Create(Shapes.Disc(2), PlainBuck.Spec with { Draft = 0, Depth = 24 })
            .Named("label-no-room")).Message);

    /// <summary>Found by an attack: a base on thousands of feet gave a finding for each of them.</summary>
    [Fact]
    public void Lettering_left_off_very_many_pieces_is_one_finding()
    {
        var grid = Region.FromLoops(Enumerable.Range(0, 100).Select(i => Loop.Circle(new(i % 10 * 20, i / 10 * 20), 2)));
        var finding = Assert.Single(PlainBuck.Create(grid, PlainBuck.Spec with { Draft = 0, Depth = 24 }).Named("label-no-room"));
        Assert.StartsWith("The lettering of 100 pieces does not fit on them, even 2.5 mm high; it is left off: 1A, 1B, ",
            finding.Message);
        Assert.EndsWith(" and 88 more.", finding.Message);
    }

    /// <summary>
    /// An outline that is off by more than a millimetre somewhere is noticed; a mirrored one only when no mirror keeps it.
    /// </summary>
    [Theory]
    [InlineData(0, true)]
    [InlineData(1, true)]
    [InlineData(1.01, false)]
    public void A_notch_tells_the_way_when_it_is_deep_enough(double depth, bool fits)
    {
        // The notch lies beside the middle on one side only: turned or flipped it lies elsewhere.
        var piece = new Island(
            Loop.Polygon(new(0, 0), new(20, 0), new(20.0001, depth), new(25, depth), new(25.0001, 0), new(80, 0), new(80, 20),
                new(0, 20)), []);
        Assert.Equal(fits, TurnCheck.FitsWrongWay(piece, [new(10, 10), new(70, 10)]));
    }

    [Fact]
    public void Each_of_the_three_wrong_ways_is_tried()
    {
        // Alike only when turned by half a turn, only when flipped along, only when flipped across the dowels.
        Vec2[] turned = [new(0, 0), new(70, 0), new(80, 20), new(10, 20)],
            along = [new(0, 0), new(80, 5), new(80, 15), new(0, 20)], across = [new(0, 0), new(80, 0), new(70, 20), new(10, 20)];
        foreach (var corners in (Vec2[][])[turned, along, across])
            Assert.True(TurnCheck.FitsWrongWay(new(Loop.Polygon(corners), []), [new(20, 10), new(60, 10)]));
        Assert.False(TurnCheck
            .FitsWrongWay(new(Loop.Polygon(new(0, 0), new(80, 0), new(80, 12), new(0, 20)), []), [new(20, 8), new(60, 8)]));
        Assert.False(TurnCheck.FitsWrongWay(new(Loop.Polygon(turned), []), [new(20, 10), new(60, 10), new(40, 12)]));
    }

    [Fact]
    public void Pieces_are_called_by_layer_and_letter_and_those_of_a_jig_by_name_and_number()
    {
        var layer = PlainBuck.Create(Shapes.Rectangle(100, 60)).Layers[1];
        Assert.Equal("2A", layer.NameOf(layer.Parts[0]));
        Assert.Equal("RING2",
            (layer with { Name = "RING", Parts = [layer.Parts[0] with { Letter = "RING" }] })
                .NameOf(layer.Parts[0] with { Letter = "RING" }));
        Assert.Throws<ArgumentNullException>(() => layer.NameOf(null!));
    }

    [Fact]
    public void A_grid_of_vents_is_centred_on_its_floor()
    {
        var air = new Island(Loop.Rectangle(new(10, 20, 140, 120)), []);
        var room = Region.FromLoops([Loop.Rectangle(new(14, 24, 136, 116))]);
        var places = VentPatterns.Grid.Places(new(air, room), new() { GridPitch = 50 }).ToArray();
        // 130 x 100 mm hold 2 steps by 2; the outer rows lie on the edges of the floor and are left out.
        Assert.Equal([new(25, 70), new(75, 70), new(125, 70)], places);
        // 90 mm up hold one step: two rows either side of the middle.
        var low = new Island(Loop.Rectangle(new(10, 25, 140, 115)), []);
        Assert.Equal(
            [new(25, 45), new(75, 45), new(125, 45), new(25, 95), new(75, 95), new(125, 95)],
            VentPatterns.Grid.Places(new(low, room), new() { GridPitch = 50 }));
    }

    [Fact]
    public void The_patterns_are_called_walls_grid_and_given()
    {
        Assert.Equal([("walls", true), ("grid", false), ("given", false)], VentPatterns.All.Select(p => (p.Name, p.AlongWalls)));
        Assert.Empty(VentPatterns.Given.Places(null!, new()));
        Assert.Empty(VentPatterns.Walls.Places(null!, new()));
    }

    [Fact]
    public void Heights_are_faces_and_middles_and_a_stack_may_be_kept_below_its_depth()
    {
        var plan = StackPlan.Choose(18, [new("a", 12), new("b", 6)], 0.1);
        Assert.Equal([3, 9, 15, 18, 21], plan.HeightsFrom(3));
        Assert.Equal(36, StackPlan.Choose(31, [PlainBuck.Mdf12], 0.5).Depth);
        Assert.Equal(24, StackPlan.Choose(31, [PlainBuck.Mdf12], 0.5, neverMore: true).Depth);
        Assert.Equal(24, StackPlan.Choose(24, [PlainBuck.Mdf12], 0.5, neverMore: true).Depth);
    }

    [Theory]
    [InlineData(3.8, 11.4)]
    [InlineData(3.85, 11.55)]
    [InlineData(3.855, 11.565)]
    [InlineData(3.8555, 11.5665)]
    public void Thicknesses_are_taken_to_a_tenth_of_a_micrometre(double thickness, double depth)
    {
        var plan = StackPlan.Choose(depth, [new("measured", thickness)], 0);
        Assert.Equal(3, plan.LayerStocks.Length);
        Assert.Equal(0, plan.Miss, 1e-9);
    }

    [Fact]
    public void Four_hundred_layers_are_taken_and_one_more_is_refused()
    {
        Assert.Equal(400, StackPlan.Choose(400, [new("thin", 1)], 0).LayerStocks.Length);
        Assert.Equal(
            "The stack would need 401 layers, the limit is 400; use thicker stock.",
            Assert.Throws<SpecException>(() => StackPlan.Choose(401, [new("thin", 1)], 0)).Message);
    }
}
