using Xunit;

namespace BuckGen.Geometry.Tests;

public class NestingTests
{
    // A target: disc 50, hole 40, island 30 in the hole, hole 20, island 10.
    private static readonly double[] Target = [50, 40, 30, 20, 10];

    [Fact]
    public void Loops_at_even_depth_are_islands_and_at_odd_depth_holes()
    {
        var region = Region.FromLoops(Target.Select(r => Loop.Circle(new(0, 0), r)));

        Assert.Equal(3, region.Islands.Length);
        Assert.Equal(2, region.HoleCount);
        Assert.Equal(Math.PI * (2500 - 1600 + 900 - 400 + 100), region.Area, 1e-6);
        Assert.Equal([1, 1, 0], region.Islands.Select(i => i.Holes.Length));
    }

    [Fact]
    public void Neither_order_nor_direction_of_the_loops_matters()
    {
        var circles = Target.Select(r => Loop.Circle(new(0, 0), r)).ToArray();
        var straight = Region.FromLoops(circles);
        var shuffled = Region.FromLoops(circles.Reverse().Select((c, i) => i % 2 == 0 ? c.Reversed() : c));

        Assert.Equal(straight.Area, shuffled.Area, 1e-6);
        Assert.Equal(straight.Islands.Select(i => i.Holes.Length), shuffled.Islands.Select(i => i.Holes.Length));
    }

    [Fact]
    public void Outer_edges_run_counter_clockwise_and_holes_clockwise()
    {
        var region = Region.FromLoops(Target.Select(r => Loop.Circle(new(0, 0), r).Reversed()));

        Assert.All(region.Islands, i => Assert.True(i.Outer.IsCounterClockwise));
        Assert.All(region.Islands.SelectMany(i => i.Holes), h => Assert.False(h.IsCounterClockwise));
    }

    [Theory]
    [InlineData(45, true)]
    [InlineData(35, false)]
    [InlineData(25, true)]
    [InlineData(15, false)]
    [InlineData(5, true)]
    [InlineData(55, false)]
    public void A_point_lies_in_the_wood_or_in_a_hole(double x, bool inside) =>
        Assert.Equal(inside, Region.FromLoops(Target.Select(r => Loop.Circle(new(0, 0), r))).Contains(new(x, 0.5)));

    [Fact]
    public void Islands_beside_each_other_stay_apart_though_their_bounds_overlap()
    {
        // Two L shapes that grip into each other.
        var region = Shapes.Union(
            Shapes.Polygon((0, 0), (50, 0), (50, 10), (10, 10), (10, 50), (0, 50)),
            Shapes.Polygon((60, 60), (15, 60), (15, 50), (50, 50), (50, 15), (60, 15)));

        Assert.Equal(2, region.Islands.Length);
        Assert.Equal(0, region.HoleCount);
    }

    [Fact]
    public void A_hole_that_touches_its_outer_edge_is_still_a_hole()
    {
        var region = Region.FromLoops([Loop.Rectangle(new(0, 0, 100, 60)), Loop.Polygon(new(0, 30), new(20, 20), new(20, 40))]);

        Assert.Single(region.Islands);
        Assert.Equal(1, region.HoleCount);
    }

    [Fact]
    public void Loops_without_area_are_nothing() =>
        Assert.True(Region.FromLoops([Loop.Polygon(new(0, 0), new(10, 0), new(20, 0))]).IsEmpty);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_loop_that_touches_another_on_three_sides_lies_in_it_or_beside_it_whichever_corner_is_first(int first)
    {
        var around = Loop.Polygon(new(0, 0), new(80, 0), new(80, 50), new(0, 50));
        var notched =
            Loop.Polygon(new(0, 0), new(90, 0), new(90, 90), new(60, 90), new(60, 30), new(30, 30), new(30, 90), new(0, 90));

        var inside = Region.FromLoops([around, From(new(0, 0.07), new(80, 0), new(80, 50), new(0, 50))]);
        var beside = Region.FromLoops([notched, From(new(30, 30), new(60, 30), new(60, 90), new(30, 90))]);

        Assert.Equal((1, 1), (inside.Islands.Length, inside.HoleCount));
        Assert.Equal(0.07 * 80 / 2, inside.Area, 1e-9);
        Assert.Equal((2, 0), (beside.Islands.Length, beside.HoleCount));

        Loop From(params Vec2[] corners) => Loop.Polygon([.. corners[first..], .. corners[..first]]);
    }

    [Fact]
    public void A_loop_that_is_the_same_but_for_one_corner_is_judged_by_where_most_of_that_corner_lies()
    {
        // The corner of the smaller one sticks out by 0.003 and stays behind by 0.016.
        var larger = Loop.Polygon(new(0, 0), new(80, 0), new(80, 50), new(40, 50.03), new(0, 50));
        var smaller = Loop.Polygon(new(0, 0), new(80.003, 0.001), new(80, 50), new(40, 50.011), new(0, 50));

        Assert.Equal(1, Region.FromLoops([larger, smaller]).HoleCount);
    }

    /// <summary>
    /// Found by a damaged file: an outline drawn twice, once with a spike, became an island on top of an island.
    /// </summary>
    [Fact]
    public void A_loop_that_is_the_same_but_for_a_spike_of_the_larger_one_lies_in_it()
    {
        var larger = Loop.Polygon(new(0, 0), new(80, 0), new(80, 50), new(40.02, 50), new(20, 90), new(40, 50), new(0, 50));
        var smaller = Loop.Polygon(new(0, 0), new(80.006, 0.001), new(80, 50), new(0, 50));

        Assert.Equal((1, 1), (Region.FromLoops([larger, smaller]).Islands.Length, Region.FromLoops([larger, smaller]).HoleCount));
    }
}
