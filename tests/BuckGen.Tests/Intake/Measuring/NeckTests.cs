using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using Xunit;
using static BuckGen.Tests.Intake.Measuring.Measured;

namespace BuckGen.Tests.Intake.Measuring;

public class NeckTests
{
    [Fact]
    public void The_bar_of_a_dumbbell_is_its_neck()
    {
        var neck = NeckOf(Region.FromLoops([Dumbbell]));

        Width(10, neck);
        At(50, 20, neck.Middle);
        Assert.Equal([15, 25], new[] { neck.A.Y, neck.B.Y }.Order());
    }

    [Theory]
    [InlineData(100, 3)]
    [InlineData(0.5, 200)]
    [InlineData(7, 7)]
    public void A_bar_is_as_narrow_as_its_sides_are_apart(double width, double height) =>
        Width(Math.Min(width, height), NeckOf(Shapes.Rectangle(width, height)));

    [Fact]
    public void A_disc_is_as_narrow_as_it_is_wide_and_round_its_centre()
    {
        var neck = NeckOf(Shapes.DiscAt(30, -7, 12.5));

        Width(25, neck);
        At(30, -7, neck.Middle);
    }

    [Fact]
    public void A_ring_is_as_narrow_as_its_wall() => Width(3, NeckOf(Shapes.Ring(20, 17)));

    [Fact]
    public void A_ring_whose_hole_is_off_its_centre_is_narrowest_on_that_side()
    {
        var neck = NeckOf(Region.FromLoops([Loop.Circle(new(0, 0), 20), Loop.Circle(new(3, 4), 10)]));

        Width(5, neck);
        At(17.5 * 0.6, 17.5 * 0.8, neck.Middle);
    }

    [Fact]
    public void A_slotted_shape_of_lines_and_half_circles_is_as_narrow_as_twice_its_radius() =>
        Width(8, NeckOf(Shapes.Slot(30, 4)));

    [Fact]
    public void A_hole_near_an_edge_leaves_a_neck_square_to_the_edge()
    {
        var neck = NeckOf(Region.FromLoops([Loop.Rectangle(new(0, 0, 100, 60)), Loop.Circle(new(41.5, 12), 10.4)]));

        Width(1.6, neck);
        At(41.5, 0.8, neck.Middle);
    }

    [Fact]
    public void Two_holes_leave_a_neck_on_the_line_of_their_centres()
    {
        var neck = NeckOf(
            Region.FromLoops([Loop.Rectangle(new(0, 0, 100, 100)), Loop.Circle(new(40, 40), 6), Loop.Circle(new(52, 56), 10)]));

        Width(4, neck);
        At(40 + 8 * 0.6, 40 + 8 * 0.8, neck.Middle);
    }

    [Fact]
    public void An_inside_corner_near_another_makes_a_neck_from_tip_to_tip()
    {
        // An hourglass: its waist lies between two inside corners of 3 mm distance.
        var neck = NeckOf(Shapes.Polygon((0, 0), (20, 0), (11.5, 15), (20, 30), (0, 30), (8.5, 15)));

        Width(3, neck);
        At(10, 15, neck.Middle);
    }

    [Fact]
    public void A_waist_between_two_arcs_is_measured_on_the_line_of_their_centres()
    {
        // Half circles of 10 mm radius bitten out of both long sides of a bar 30 mm wide, 4 mm of it along its length apart.
        var neck = NeckOf(Region.FromLoops([Loop.FromCorners([
            (new(0, 0), 0), (new(20, 0), -1), (new(40, 0), 0), (new(80, 0), 0), (new(80, 30), 0), (new(44, 30), -1),
            (new(24, 30), 0), (new(0, 30), 0)])]));

        var between = Math.Sqrt(4 * 4 + 30 * 30);
        Width(between - 20, neck);
        At(32, 15, neck.Middle);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(20)]
    [InlineData(3)]
    [InlineData(0.05)]
    public void The_tip_of_a_wedge_is_no_neck(double degrees) => Assert.Null(Measure(Wedge(degrees)).NarrowestNeck);

    [Theory]
    [InlineData(60, 0.01)]
    [InlineData(20, 0.001)]
    [InlineData(20, 2)]
    [InlineData(3, 0.05)]
    public void Nor_is_a_rounded_tip(double degrees, double radius)
    {
        var measures = Measure(RoundedWedge(degrees, radius));

        Assert.Null(measures.NarrowestNeck);
        Assert.Equal(radius, measures.MinOutsideRadius!.Radius, 1e-9);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(20)]
    [InlineData(1)]
    public void Nor_is_a_tip_that_is_cut_off(double degrees)
    {
        var side = 0.5 * Math.Tan(degrees * Math.PI / 360);

        Assert.Null(Measure(Wedge(degrees, (new(0.5, side), 0), (new(0.5, -side), 0))).NarrowestNeck);
    }

    [Fact]
    public void Nor_is_a_tip_that_is_rounded_by_many_short_lines()
    {
        var facets = Enumerable.Range(0, 41)
            .Select(i => (new Vec2(5, 0) + new Vec2(0, 1).Turned(Math.PI * (0.05 + 0.9 * i / 40)), 0.0));

        Assert.Null(Measure(Wedge(18, [.. facets])).NarrowestNeck);
    }

    [Fact]
    public void A_triangle_has_no_sides_that_face_each_other() =>
        Assert.Null(Measure(Shapes.Polygon((0, 0), (30, 0), (10, 40))).NarrowestNeck);

    [Fact]
    public void A_bar_whose_corners_were_rounded_to_three_decimals_keeps_its_width()
    {
        var turn = Affine.Rotation(0.3, new(0, 0));
        var corners = new Vec2[] { new(0, 0), new(10, 0), new(10, 3), new(0, 3) }.Select(p => turn.Apply(p));

        var neck = NeckOf(
            Region.FromLoops([Loop.Polygon(corners.Select(p => new Vec2(Math.Round(p.X, 3), Math.Round(p.Y, 3))))]));

        // Each corner moved by up to 0.0007 mm.
        Assert.Equal(3, neck.Width, 0.0015);
    }

    [Fact]
    public void A_bar_whose_sides_are_not_quite_parallel_is_measured_at_its_narrow_end()
    {
        // 20 mm wide at one end and 19.8 mm at the other, 300 mm on: 0.04°. A circle fits in half its width before that end.
        var neck = NeckOf(Shapes.Polygon((0, 0), (300, 0.1), (300, 19.9), (0, 20)));

        Assert.Equal(19.8 + 0.2 * 9.9 / 300, neck.Width, 0.001);
        Assert.Equal(290.1, neck.Middle.X, 0.1);
    }

    [Theory]
    [InlineData(24)]
    [InlineData(25)]
    [InlineData(36)]
    [InlineData(101)]
    [InlineData(1000)]
    [InlineData(1001)]
    public void A_circle_of_many_lines_is_as_narrow_as_that_circle_but_for_its_lines(int corners)
    {
        var neck = NeckOf(Region.FromLoops([Regular(corners, 20)]));

        // A line of it lies nearer to the centre than a corner by R·(1 - cos(π/n)).
        Assert.InRange(neck.Width, 40 * Math.Cos(Math.PI / corners) - Near, 40 + Near);
        Assert.True(neck.Middle.Length <= 20 * (1 - Math.Cos(Math.PI / corners)) + Near);
    }

    [Theory]
    [InlineData(72)]
    [InlineData(73)]
    [InlineData(2000)]
    public void An_ellipse_of_many_lines_is_narrowest_across_its_middle(int corners)
    {
        var neck = NeckOf(Region.FromLoops([Ellipse(corners, 30, 10)]));

        // The chord error, and a few millionths of the radius of curvature, 90 mm, for pairs that are not quite square.
        Assert.Equal(20, neck.Width, 20 * (1 - Math.Cos(Math.PI / corners)) + 90 * 5e-6);
        // Where the sides are 0.1° from parallel: 90 mm · 0.1° from the middle, and the length of a line more.
        Assert.Equal(0, neck.Middle.X, 90 * 0.1 * Math.PI / 180 + 60 * Math.PI / corners);
    }

    [Fact]
    public void An_outline_of_flat_and_tight_arcs_is_narrowest_between_its_flat_arcs()
    {
        // Four arcs that meet smoothly: radii 50 and 10, the flat ones 40 mm from the axis' other side.
        var flat = Math.Asin(30.0 / 40);
        var touch = new Vec2(0, -50).Turned(flat) + new Vec2(0, 50 - 24);
        var region = Region.FromLoops([Loop.FromCorners([
            (new(-touch.X, touch.Y), Math.Tan(flat / 2)), (touch, Math.Tan((Math.PI - 2 * flat) / 4)),
            (new(touch.X, -touch.Y), Math.Tan(flat / 2)), (-touch, Math.Tan((Math.PI - 2 * flat) / 4))])]);

        var neck = NeckOf(region);

        Width(48, neck);
        At(0, 0, neck.Middle);
    }
}
