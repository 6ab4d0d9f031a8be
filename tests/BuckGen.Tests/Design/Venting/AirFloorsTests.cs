using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>
/// A plate of 140 x 100 mm and on it, 20 mm from its edges, a block of 100 x 60 mm with a counter of 40 x 20 mm.
/// </summary>
public class AirFloorsTests
{
    private static readonly Region Letter = Shapes.Counter(100, 60, 40, 20);
    private static readonly LayerBlank Plate = new(1, LayerRole.Base, Vented.Mdf6, 0, 6, Shapes.RectangleAt(-20, -20, 140, 100));
    private static readonly LayerBlank Wall = new(2, LayerRole.Wall, Vented.Mdf6, 6, 12, Letter);
    private static readonly Vec2 InTheCounter = new(50, 30);

    [Fact]
    public void The_plate_is_a_floor_round_the_block_and_in_its_counter_the_smallest_first()
    {
        var floors = AirFloors.Find([Plate, Wall], Solid(Letter), []);

        Assert.Equal([800, 14000 - 6000], floors.Select(f => f.Air.Area), (a, b) => Math.Abs(a - b) < 1e-6);
        Assert.All(floors, f => Assert.Same(Plate, f.Layer));
        Assert.All(floors, f => Assert.Null(f.DeepestPoint));
        Assert.All(floors, f => Assert.Equal(Letter.Area, f.Walls.Wood.Area));
        // Found by an attack: 1,600 pockets took minutes, since every floor had an index of all walls of its own.
        Assert.Same(floors[0].Walls, floors[1].Walls);
    }

    [Fact]
    public void Round_a_block_with_a_cavity_nothing_is_formed()
    {
        var floor = Assert
            .Single(AirFloors
                .Find([Plate with { Wood = Shapes.RectangleAt(-60, -60, 220, 180) }, Wall],
                    Solid(Shapes.Rectangle(100, 60), BuckKind.Female), []));

        Assert.Equal(6000, floor.Air.Area, 1e-6);
    }

    /// <summary>A ledge 8 mm wide where boards meet, 24 mm up, and one too narrow to shut any air in.</summary>
    [Theory]
    [InlineData(BuckKind.Male, 8, 1)]
    [InlineData(BuckKind.Female, 8, 1)]
    [InlineData(BuckKind.Male, 2, 0)]
    public void A_ledge_is_a_floor_between_its_two_walls(BuckKind kind, double inset, int floors)
    {
        var spec = Vented.Spec(kind) with
        {
            Side = [new() { Draft = 0 }, new() { Height = 0, Inset = inset }, new() { Height = 12, Draft = 0 }],
            OutlineAt = kind == BuckKind.Male ? OutlineAt.Base : OutlineAt.Face,
        };
        var design = Vented.Design(Shapes.Rectangle(100, 60), spec);
        var blanks = design.Layers.Select(l => new LayerBlank(l.Number, l.Role, l.Stock, l.Bottom, l.Top, l.Region)).ToArray();

        var found = AirFloors.Find(blanks, design.Solid!, []).Where(f => f.Layer.Role == LayerRole.Wall).ToArray();

        Assert.Equal(floors, found.Length);
        if (floors == 0) return;
        Assert.Equal(24, found[0].Layer.Top);
        Assert.Equal(100 * 60 - 84 * 44, found[0].Air.Area, 0.1);
        var vents = design.Vents!.Vents.Where(v => v.Layer == found[0].Layer.Number).ToArray();
        Assert.NotEmpty(vents);
        // Beside the wall that rises from the ledge.
        var wall = kind == BuckKind.Male ? Shapes.RectangleAt(8, 8, 84, 44) : Shapes.Rectangle(100, 60);
        Assert.All(vents, v => Assert.InRange(wall.DistanceToEdge(v.Centre), 0.2, 3));
        Assert.All(vents, v => Assert.Equal(kind == BuckKind.Female, wall.Contains(v.Centre)));
    }

    [Fact]
    public void A_hole_that_the_layer_below_lacks_is_a_pit_on_that_layer()
    {
        LayerBlank whole = Wall with { Wood = Shapes.Rectangle(100, 60) },
            upper = new(3, LayerRole.Wall, Vented.Mdf6, 12, 18, Letter);

        Assert.Equal([2], PitLayers(whole, upper));
        Assert.Empty(PitLayers(Wall, upper));

        static IEnumerable<int> PitLayers(params LayerBlank[] walls) =>
            AirFloors.Find([Plate, .. walls], Solid(Letter), []).Where(f => f.Layer.Number > 1).Select(f => f.Layer.Number);
    }

    [Fact]
    public void What_stands_in_a_pit_is_no_floor()
    {
        var post = Region.FromLoops([.. Letter.Loops, Loop.Rectangle(new(45, 25, 55, 35))]);
        LayerBlank whole = Wall with { Wood = Shapes.Rectangle(100, 60) },
            upper = new(3, LayerRole.Wall, Vented.Mdf6, 12, 18, post);

        var pit = Assert.Single(AirFloors.Find([Plate, whole, upper], Solid(post), []), f => f.Layer.Number == 2);

        Assert.Equal(800 - 100, pit.Air.Area, 1e-6);
    }

    [Fact]
    public void Air_that_ends_above_the_floor_bottoms_out_on_the_first_layer_with_wood_there()
    {
        // By the smooth walls there is no hole any more, but the upper layer is cut with one.
        LayerBlank whole = Wall with { Wood = Shapes.Rectangle(100, 60) },
            upper = new(3, LayerRole.Wall, Vented.Mdf6, 12, 18, Letter);

        var floors = AirFloors.Find([Plate, whole, upper], Solid(Shapes.Rectangle(100, 60)), [InTheCounter]);

        Assert.Equal(InTheCounter, floors[0].DeepestPoint);
        Assert.Equal((2, 800), (floors[0].Layer.Number, Math.Round(floors[0].Air.Area, 6)));
        Assert.Equal([null], floors.Skip(1).Select(f => f.DeepestPoint));
    }

    [Fact]
    public void A_level_floor_of_another_layer_does_not_stand_in_for_it()
    {
        // The lower layer has a hole of its own in the counter's place, so that it carries no pit; the plate has a floor there.
        var pierced =
            Wall with { Wood = Region.FromLoops([.. Shapes.Rectangle(100, 60).Loops, Loop.Rectangle(new(32, 22, 36, 26))]) };

        var floors =
            AirFloors.Find([Plate, pierced, new(3, LayerRole.Wall, Vented.Mdf6, 12, 18, Letter)], Solid(Letter), [new(60, 30)]);

        Assert.Equal((new Vec2(60, 30), 2), (floors[0].DeepestPoint!.Value, floors[0].Layer.Number));
    }

    [Fact]
    public void Where_a_level_floor_lies_already_or_wood_stands_there_is_no_further_one()
    {
        LayerBlank whole = Wall with { Wood = Shapes.Rectangle(100, 60) },
            upper = new(3, LayerRole.Wall, Vented.Mdf6, 12, 18, Letter);

        Assert.All(AirFloors.Find([Plate, whole, upper], Solid(Letter), [InTheCounter]), f => Assert.Null(f.DeepestPoint));
        Assert.All(AirFloors.Find([Plate, whole, upper], Solid(Shapes.Rectangle(100, 60)), [new(10, 10)]),
            f => Assert.Null(f.DeepestPoint));
        Assert.All(AirFloors.Find([Plate, whole, upper], Solid(Shapes.Rectangle(100, 60)), [new(500, 500)]),
            f => Assert.Null(f.DeepestPoint));
    }

    [Fact]
    public void The_trapped_air_is_the_box_less_a_block_with_sloping_walls()
    {
        // At 45 degrees 100 x 60 mm become 120 x 80 mm in 10 mm: the integral of (100 + 2h)(60 + 2h) from 0 to 10 is 77,333 mm³.
        var (sloping, spec) = Sloping(45);
        LayerBlank[] layers =
            [Plate, new(2, LayerRole.Wall, Vented.Mdf6, 6, 11, Region.Empty),
                new(3, LayerRole.Wall, Vented.Mdf6, 11, 16, Region.Empty)];

        Assert.Equal((140 * 100 * 10 - 77333.3333) / 1e6, TrappedAir.Litres(layers, sloping), 1e-9);
        Assert.Equal(77333.3333 / 1e6, TrappedAir.Litres(layers, new(sloping.Shape, spec with { Kind = BuckKind.Female })), 1e-9);
    }

    [Fact]
    public void Walls_that_lean_out_over_the_plate_trap_no_less_than_nothing()
    {
        var (leaning, _) = Sloping(-45);
        LayerBlank[] layers =
            [Plate with { Wood = Shapes.Rectangle(80, 40) }, new(2, LayerRole.Wall, Vented.Mdf6, 6, 16, Region.Empty)];

        Assert.Equal(0, TrappedAir.Litres(layers, leaning));
    }

    private static (StackedSolid Solid, BuckSpec Spec) Sloping(double draft)
    {
        var spec = Vented.Spec() with { Draft = draft, Depth = 10, Corners = CornerJoin.Mitre };
        return (new(new(Shapes.Rectangle(100, 60), spec, 6, 16, new ArcOffsetter()), spec), spec);
    }

    /// <summary>Upright walls from the plate to 18 mm.</summary>
    private static StackedSolid Solid(Region outline, BuckKind kind = BuckKind.Male)
    {
        var spec = Vented.Spec(kind) with { Draft = 0 };
        return new(new(outline, spec, 6, 18, new ArcOffsetter()), spec);
    }
}
