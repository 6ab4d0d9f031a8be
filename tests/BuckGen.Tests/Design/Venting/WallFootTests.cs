using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>
/// The foot of the wall round a pocket of 100 x 60 mm, 320 mm long from its lower left corner; vents lie 1 mm from it and
/// serve up to 8 mm.
/// </summary>
public class WallFootTests
{
    private static readonly Loop Pocket = Loop.Rectangle(new(0, 0, 100, 60));

    [Fact]
    public void Without_vents_the_whole_foot_is_too_long()
    {
        // A rectangle's corners are equally far from its middle; the one farthest from the middle of the outline begins.
        var stretch = Assert.Single(Foot(Pocket).TooLong([], 25));

        Assert.Equal(new(160, 480, IsServed: false), stretch);
        Assert.Equal(320, stretch.Length);
    }

    [Fact]
    public void A_vent_serves_the_foot_beside_it()
    {
        var stretch = Assert.Single(Foot(Pocket).TooLong([At(50, 1)], 25));

        Assert.Equal(new(50, 370, IsServed: true), stretch);
    }

    [Theory]
    [InlineData(159.9, 2)]
    [InlineData(160, 0)]
    public void A_stretch_as_long_as_the_spacing_is_well(double spacing, int tooLong) =>
        // From 50 mm along the lower side to the upper side's middle, at 210 mm.
        Assert.Equal(tooLong, Foot(Pocket).TooLong([At(50, 59), At(50, 1)], spacing).Count);

    [Fact]
    public void A_vent_in_a_corner_serves_both_sides() =>
        Assert.Equal([(1.0, 319.0)], Foot(Pocket).TooLong([At(1, 1)], 25).Select(s => (s.From, s.To)));

    [Theory]
    [InlineData(8, true)]
    [InlineData(8.01, false)]
    public void A_vent_beyond_the_reach_serves_nothing(double away, bool serves) =>
        Assert.Equal(serves, Foot(Pocket).TooLong([At(50, away)], 25).Single().IsServed);

    [Fact]
    public void A_vent_behind_a_wall_serves_nothing()
    {
        // A wall 1 mm thick stands 2 mm from the foot.
        var walls = Region.FromLoops([.. Round(Pocket).Loops, Loop.Rectangle(new(20, 2, 80, 3))]);

        Assert.False(Foot(Pocket, walls).TooLong([At(50, 5)], 25).Single().IsServed);
        Assert.True(Foot(Pocket, walls).TooLong([At(10, 5)], 25).Single().IsServed);
    }

    [Fact]
    public void Where_an_outer_corner_is_nearest_it_counts_once()
    {
        // The corner at (40, 40) sticks out into an L-shaped pocket; seen from beyond both sides it is the nearest point of
        // either.
        var bend = Loop.Polygon(new(0, 0), new(100, 0), new(100, 40), new(40, 40), new(40, 100), new(0, 100));

        Assert.Equal([(200.0, 600.0)], Foot(bend).TooLong([At(37, 37)], 25).Select(s => (s.From, s.To)));
    }

    [Fact]
    public void A_wish_stands_at_the_distance_from_the_foot()
    {
        var wish = Foot(Pocket).CandidateAt(130);

        Assert.Equal((VentReason.Wall, 130.0), (wish.Reason, wish.Along));
        Assert.Equal(0, wish.Centre.DistanceTo(new(99, 30)), 1e-9);
        Assert.Equal(0, wish.Way!(50).DistanceTo(new(50, 1)), 1e-9);
    }

    [Fact]
    public void In_a_narrow_place_it_stands_half_way_to_the_other_wall()
    {
        var wish = Foot(Loop.Rectangle(new(0, 0, 100, 1.2))).CandidateAt(50);

        Assert.Equal(VentReason.Gap, wish.Reason);
        Assert.Equal(0, wish.Centre.DistanceTo(new(50, 0.6)), 1e-4);
    }

    [Fact]
    public void A_point_of_the_foot_is_counted_round_and_round()
    {
        Assert.Equal(320, Foot(Pocket).Length);
        Assert.Equal(0, Foot(Pocket).PointAt(320 + 130).DistanceTo(new(100, 30)), 1e-9);
    }

    [Theory]
    // Of equally far corners the one farthest from the middle of the outline, then the first counter-clockwise from x.
    [InlineData(0, 0, 160)]
    [InlineData(100, 60, 0)]
    [InlineData(100, 0, 260)]
    [InlineData(50, 30, 160)]
    [InlineData(50, 0, 160)]
    public void A_row_without_a_corner_to_begin_at_begins_farthest_out(double x, double y, double along) =>
        Assert.Equal(along, RowStart.Find(new(Pocket), new(x, y)), 1e-9);

    [Theory]
    [InlineData(-100, 55.708)] // the lower side and a quarter of a circle of 10 mm
    [InlineData(100, 127.124)] // both sides and three quarters
    public void On_an_arc_it_begins_at_its_farthest_point(double x, double along) =>
        Assert.Equal(along, RowStart.Find(new(Shapes.Slot(40, 10).OnlyLoop()), new(x, 0)), 0.001);

    [Fact]
    public void The_farthest_point_of_an_arc_is_found_wherever_the_loop_lies() =>
        Assert.Equal(127.124, RowStart.Find(new(Shapes.Slot(40, 10).Moved(0, 30).OnlyLoop()), new(100, 100)), 0.001);

    [Fact]
    public void A_circle_begins_where_it_is_farthest_from_the_middle_of_the_outline() =>
        // At (70, 20), three quarters of the way round from (50, 0).
        Assert.Equal(0.75 * 40 * Math.PI, RowStart.Find(new(Loop.Circle(new(70, 0), 20)), new(70, -50)), 0.001);

    [Fact]
    public void A_point_beside_the_farthest_one_is_no_start_though_it_seems_as_far()
    {
        // 0.1 mm beside the tip, 0.0003 mm nearer to the middle, and farther from the middle of the outline.
        var lens = Loop.Polygon(new(50, 0), new(49.9996, 0.1), new(0, 10), new(-50, 0), new(-49.9996, -0.1), new(0, -10));

        Assert.Equal(0, RowStart.Find(new(lens), new(0, -100)), 1e-9);
    }

    private static Vent At(double x, double y) => new(new(x, y), 1, 1, VentReason.Wall);

    private static WallFoot Foot(Loop loop, Region? walls = null) => new(
        loop, new(new(1, LayerRole.Base, Vented.Mdf6, 0, 6, Shapes.Rectangle(200, 200)), new(loop, []),
            new(walls ?? Round(loop))), 1, 8, new(0, 0));

    /// <summary>Wood round a pocket.</summary>
    private static Region Round(Loop pocket) => Region.FromLoops([Loop.Rectangle(pocket.Bounds.Grown(20)), pocket]);
}
