using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>The vents of one pocket of 100 x 60 mm over a plate: their centres stand 1 mm from its wall.</summary>
public class FloorVentsTests
{
    private static readonly Loop Pocket = Loop.Rectangle(new(0, 0, 100, 60));
    private static readonly LayerBlank Plate = new(1, LayerRole.Base, Vented.Mdf6, 0, 6, Shapes.RectangleAt(-50, -50, 200, 160));

    [Fact]
    public void A_pocket_gets_its_corners_and_vents_along_its_walls()
    {
        var placing = Placed(Pocket, new());

        // 98 mm in four parts and 58 mm in three: three and two between the corners.
        Assert.Equal(4, WithReason(placing, VentReason.Corner).Length);
        Assert.Equal(2 * 3 + 2 * 2, WithReason(placing, VentReason.Wall).Length);
        Assert.Contains(WithReason(placing, VentReason.Corner), p => Near(p, new(1, 1)));
        Assert.Contains(WithReason(placing, VentReason.Wall), p => Near(p, new(25.5, 1)));
        Assert.Empty(placing.Findings);
        Assert.All(placing.Vents, v => Assert.Equal((1, 1.0), (v.Layer, v.Diameter)));
    }

    [Fact]
    public void The_farthest_corner_from_the_middle_of_the_outline_comes_first() =>
        Assert.Equal([new(99, 59), new(99, 1), new(1, 59), new(1, 1)],
            WithReason(Placed(Pocket, new()), VentReason.Corner), Near);

    [Fact]
    public void A_point_that_was_asked_for_comes_before_all_others()
    {
        var placing = Placed(Pocket, new() { Points = [new(3, 3), new(-10, 30)] });

        Assert.Equal((new Vec2(3, 3), VentReason.Given), (placing.Vents[0].Centre, placing.Vents[0].Reason));
        // It does the work of the corner beside it; the other point lies under the wall.
        Assert.Equal(3, WithReason(placing, VentReason.Corner).Length);
        Assert.Equal(["vent-not-on-floor"], placing.Findings.Select(f => f.Id));
        Assert.Equal(new(-10, 30), placing.Findings[0].Place);
    }

    [Fact]
    public void Points_that_were_asked_for_too_near_to_each_other_are_reported()
    {
        var placing = Placed(Pocket, new() { Points = [new(50, 30), new(52, 30)] });

        Assert.Single(WithReason(placing, VentReason.Given));
        // The one farther from the middle of the outline comes first.
        Assert.Equal(("vent-no-room", new Vec2(50, 30)), (Assert.Single(placing.Findings).Id, placing.Findings[0].Place!.Value));
    }

    [Fact]
    public void A_grid_goes_all_over_the_floor_and_the_floor_has_its_own_vent()
    {
        // 100 mm hold two pitches of 40, 60 mm one: 3 x 2 places round the middle.
        var placing = Placed(Pocket, new() { Pattern = VentPatterns.Grid, GridPitch = 40 });

        // The floor's own vent stands on one of them.
        Assert.Equal([10, 50, 90], placing.Vents.Select(v => Math.Round(v.Centre.X, 6)).Distinct().Order());
        Assert.Equal([10, 50], placing.Vents.Select(v => Math.Round(v.Centre.Y, 6)).Distinct().Order());
        Assert.Equal(5, WithReason(placing, VentReason.Pattern).Length);
        Assert.Single(WithReason(placing, VentReason.Counter));
        Assert.Equal(6, placing.Vents.Count);
    }

    [Fact]
    public void With_given_points_alone_there_is_one_vent_besides()
    {
        Assert.Equal([VentReason.Given, VentReason.Counter],
            Placed(Pocket, new() { Pattern = VentPatterns.Given, Points = [new(20, 20)] }).Vents.Select(v => v.Reason));
        Assert.Equal([VentReason.Counter], Placed(Pocket, new() { Pattern = VentPatterns.Given }).Vents.Select(v => v.Reason));
    }

    [Fact]
    public void A_pocket_too_small_for_a_row_has_one_vent_in_its_middle()
    {
        // At 1 mm from its wall nothing is left of a disc of 0.9 mm.
        var vent = Assert.Single(Placed(Loop.Circle(new(30, 30), 0.9), new()).Vents);

        Assert.Equal(VentReason.Counter, vent.Reason);
        Assert.Equal(0, vent.Centre.DistanceTo(new(30, 30)), 0.05);
    }

    [Fact]
    public void A_neck_too_narrow_for_a_row_has_one_too()
    {
        // Two rooms of 30 x 30 mm joined by a passage of 1.6 x 10 mm.
        var rooms = Loop.Polygon(
            new(0, 0), new(30, 0), new(30, 14.2), new(40, 14.2), new(40, 0), new(70, 0), new(70, 30), new(40, 30), new(40, 15.8),
            new(30, 15.8), new(30, 30), new(0, 30));

        Assert.Contains(Placed(rooms, new()).Vents, v => v.Reason == VentReason.Gap && v.Centre.X is > 28 and < 42
            && Math.Abs(v.Centre.Y - 15) < 0.3);
    }

    [Fact]
    public void A_strip_too_narrow_for_a_row_has_vents_along_its_middle()
    {
        var placing = Placed(Loop.Rectangle(new(0, 0, 100, 1.6)), new());

        Assert.All(placing.Vents, v => Assert.Equal(0.8, v.Centre.Y, 0.01));
        var along = placing.Vents.Select(v => v.Centre.X).Order().ToArray();
        Assert.All(along.Zip(along.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 7 - 1e-6, 25.2));
        // Five would do; what is wished from both sides of the strip may come to stand side by side.
        Assert.InRange(along.Length, 5, 9);
        Assert.Empty(placing.Findings);
    }

    [Fact]
    public void A_strip_whose_middle_must_stay_free_has_vents_beside_it()
    {
        var placing = Placed(Loop.Rectangle(new(0, 0, 100, 1.6)), new() { KeepOut = [new(45, -1, 55, 3)] });

        Assert.NotEmpty(placing.Vents);
        Assert.DoesNotContain(placing.Findings, f => f.Id == "vent-spacing");
    }

    [Fact]
    public void The_deepest_place_of_a_sloping_floor_has_the_only_vent()
    {
        var vent = Assert.Single(Placed(Pocket, new() { Points = [new(20, 20)] }, deepest: new(70, 40)).Vents);

        Assert.Equal((new Vec2(70, 40), VentReason.Counter), (vent.Centre, vent.Reason));
    }

    [Fact]
    public void A_floor_on_which_no_vent_has_room_is_reported()
    {
        var placing = Placed(Pocket, new() { KeepOut = [new(-10, -10, 110, 70)] });

        Assert.Empty(placing.Vents);
        // Each of the four corners, and the wall that stays without.
        Assert.Equal(4, placing.Findings.Count(f => f.Id == "vent-no-room"));
        Assert.Equal(320, Assert.Single(placing.Findings, f => f.Id == "vent-spacing").Value!.Value, 1e-6);
        Assert.Empty(Placed(Pocket, new() { KeepOut = [new(-10, -10, 110, 70)], Pattern = VentPatterns.Given }).Vents);
    }

    [Fact]
    public void A_stretch_that_stays_too_long_is_reported_at_its_middle()
    {
        // Nothing may stand on the lower side from 20 to 80 mm: vents move to its ends, and 60 mm stay.
        var placing = Placed(Pocket, new() { KeepOut = [new(20, -10, 80, 10)] });

        var finding = Assert.Single(placing.Findings);
        Assert.Equal("vent-spacing", finding.Id);
        Assert.InRange(finding.Value!.Value, 60, 64);
        Assert.Equal(25, finding.Limit);
        Assert.Equal(0, finding.Place!.Value.DistanceTo(new(50, 0)), 2);
    }

    [Fact]
    public void Where_a_vent_gave_way_another_is_added_between()
    {
        // A dowel of 6 mm over the middle of the lower side pushes the vent there aside; the stretch it leaves is divided.
        var placing = Placed(Pocket, new(), new DowelHole(new(50, 5), 6));

        Assert.Empty(placing.Findings);
        var along = placing.Vents.Select(v => v.Centre).Where(p => p.Y < 2).Select(p => p.X).Order().ToArray();
        Assert.All(along.Zip(along.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 7, 25 + 1e-6));
    }

    [Fact]
    public void Beside_the_edge_of_the_plate_nothing_is_drawn()
    {
        // Round a block of 20 x 20 mm on the plate: vents along the block alone.
        var air = new Island(Plate.Wood.OnlyLoop(), [Loop.Rectangle(new(0, 0, 20, 20)).Reversed()]);
        var placing = Placed(new AirFloor(Plate, air, new(Shapes.Rectangle(20, 20))), new());

        Assert.NotEmpty(placing.Vents);
        Assert.All(placing.Vents, v => Assert.Equal(1, Shapes.Rectangle(20, 20).DistanceToEdge(v.Centre), 0.01));
        Assert.Empty(placing.Findings);
    }

    [Fact]
    public void A_round_pocket_on_which_no_vent_has_room_is_reported_once()
    {
        // Vents along a wall are not reported one by one.
        var placing = Placed(Loop.Circle(new(50, 30), 20), new() { KeepOut = [new(0, 0, 100, 60)] });

        Assert.Equal(["vent-no-room", "vent-spacing"], placing.Findings.Select(f => f.Id).Order());
        Assert.Contains("in the counter or pit", placing.Findings.Single(f => f.Id == "vent-no-room").Message);
    }

    [Theory]
    // Half of the hole and half of the distance from the wall are kept: (1 + 0.5) / 2 mm.
    [InlineData(0.75, true)]
    [InlineData(0.74, false)]
    public void A_hole_keeps_half_the_distance_from_the_wall_at_least(double away, bool granted)
    {
        var (floor, spec, taken) = (Floor(Pocket, null), new VentSpec { WallDistance = 0.5 }, new PlacedVents(7));

        Assert.Equal(granted,
            new VentPlacement(floor, new([Plate], [], spec, 1), spec, 1, taken).TryPlace(new(new(50, away), VentReason.Counter)));
        Assert.Equal(granted ? 1 : 0, taken.All.Count);
    }

    [Fact]
    public void A_point_that_was_asked_for_comes_before_the_vents_of_all_floors()
    {
        // The smaller pocket lies behind a wall of 1 mm, where the larger one would have a vent 4 mm off.
        var placing = Two(new() { Points = [new(103, 20.5)] }, Loop.Rectangle(new(101, 0, 131, 30)));

        Assert.Contains(placing.Vents, v => v.Centre == new Vec2(103, 20.5));
        Assert.DoesNotContain(placing.Findings, f => f.Id is "vent-no-room" or "vent-not-on-floor");
    }

    [Fact]
    public void Corners_come_before_walls_whichever_floor_they_are_of()
    {
        // A vent on the larger pocket's right side would stand at (99, 20.3).
        var placing = Two(new(), Loop.Rectangle(new(101, 20, 161, 60)));

        Assert.Contains(placing.Vents, v => v.Reason == VentReason.Corner && Near(v.Centre, new(102, 21)));
        Assert.DoesNotContain(placing.Vents, v => v.Reason == VentReason.Wall && v.Centre.DistanceTo(new(102, 21)) < 7);
    }

    [Fact]
    public void A_pattern_that_fails_leaves_the_vents_of_the_shape()
    {
        var spec = new VentSpec { Pattern = new Failing() };
        var vents = new FloorVents(Floor(Pocket, null), 1, spec, 7, new(10, 20), new ArcOffsetter(), default);

        Assert.Contains("it tore", Assert.Single(vents.Failures).Message);
        Assert.Equal([VentReason.Counter], vents.Candidates(25).Select(w => w.Reason));
    }

    [Fact]
    public void A_grid_of_too_many_places_is_refused() =>
        // 100 x 60 mm at a pitch of 0.3 mm are 66,000.
        Assert.Contains("more than 50000 places",
            Assert.Throws<SpecException>(() => Placed(Pocket, new() { Pattern = VentPatterns.Grid, GridPitch = 0.3 })).Message);

    [Fact]
    public void A_spacing_that_asks_for_too_many_places_is_refused() =>
        Assert.Contains("more than 50000 places",
            Assert.Throws<SpecException>(() => Placed(Pocket, new(), spacing: 0.005)).Message);

    [Fact]
    public void The_work_can_be_stopped() =>
        Assert.Throws<OperationCanceledException>(() => Placed(Floor(Pocket, null), new(), stop: new(true)));

    [Fact]
    public void The_filling_can_be_stopped()
    {
        var (floor, room, spec) = (Floor(Pocket, null), new BoreRoom([Plate], [], new(), 1), new VentSpec());
        var vents = new FloorVents(floor, 1, spec, room.Apart, new(10, 20), new ArcOffsetter(), default);

        Assert.Throws<OperationCanceledException>(() =>
            vents.Fill(new(floor, room, spec, 1, new(room.Apart)), 25, new(true)).ToList());
    }

    /// <summary>The vents of the pocket of 100 x 60 mm and a smaller one.</summary>
    private static VentPlacing Two(VentSpec spec, Loop smaller)
    {
        var walls = Region.FromLoops([Loop.Rectangle(new(-20, -20, 181, 80)), Pocket, smaller]);
        var (room, middle) = (new BoreRoom([Plate with { Wood = Shapes.RectangleAt(-50, -50, 300, 160) }], [], spec, 1),
            new Vec2(50, 30));
        FloorVents Of(Loop pocket) =>
            new(new(Plate, new(pocket, []), new(walls)), 1, spec, room.Apart, middle, new ArcOffsetter(), default);
        return VentPlacing.Create([Of(smaller), Of(Pocket)], room, spec, 1, 25, middle, default);
    }

    private sealed class Failing : IVentPattern
    {
        public string Name => "torn";

        public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec) => throw new InvalidOperationException("it tore");
    }

    private static AirFloor Floor(Loop pocket, Vec2? deepest) =>
        new(Plate, new(pocket, []), new(Region.FromLoops([Loop.Rectangle(pocket.Bounds.Grown(20)), pocket])), deepest);

    private static VentPlacing Placed(Loop pocket, VentSpec spec, DowelHole? dowel = null, double spacing = 25,
        Vec2? deepest = null) =>
        Placed(Floor(pocket, deepest), spec, dowel, spacing);

    private static VentPlacing Placed(AirFloor floor, VentSpec spec, DowelHole? dowel = null, double spacing = 25,
        CancellationToken stop = default)
    {
        var middle = new Vec2(10, 20);
        var room = new BoreRoom([Plate], dowel is null ? [] : [dowel], spec, 1);
        return VentPlacing.Create([new(floor, 1, spec, room.Apart, middle, new ArcOffsetter(), default)], room, spec, 1, spacing,
            middle, stop);
    }

    private static Vec2[] WithReason(VentPlacing placing, VentReason reason) =>
        [.. placing.Vents.Where(v => v.Reason == reason).Select(v => v.Centre)];

    private static bool Near(Vec2 a, Vec2 b) => a.DistanceTo(b) < 1e-6;
}
