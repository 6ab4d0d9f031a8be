using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using Xunit;
using static BuckGen.Tests.Intake.Measuring.Measured;

namespace BuckGen.Tests.Intake.Measuring;

public class RadiusAndCornerTests
{
    /// <summary>An L whose inside corner has a fillet of 4 mm radius and whose corner at (60, 0) is rounded to 2.5 mm.</summary>
    private static readonly Region FilletedL = Region.FromLoops([Loop.FromCorners([
        (new(0, 0), 0), (new(57.5, 0), Shapes.QuarterTurn), (new(60, 2.5), 0), (new(60, 10), 0),
        (new(14, 10), -Shapes.QuarterTurn), (new(10, 14), 0), (new(10, 50), 0), (new(0, 50), 0)])]);

    [Fact]
    public void The_fillet_of_an_L_is_its_inside_radius()
    {
        var arc = Measure(FilletedL).MinInsideRadius!;

        Assert.Equal(4, arc.Radius, Near);
        At(14, 14, arc.Centre);
        At(14 - 4 * Math.Sqrt(0.5), 14 - 4 * Math.Sqrt(0.5), arc.Place);
    }

    [Fact]
    public void The_rounded_corner_is_its_outside_radius()
    {
        var arc = Measure(FilletedL).MinOutsideRadius!;

        Assert.Equal(2.5, arc.Radius, Near);
        At(57.5, 2.5, arc.Centre);
        At(57.5 + 2.5 * Math.Sqrt(0.5), 2.5 - 2.5 * Math.Sqrt(0.5), arc.Place);
    }

    [Fact]
    public void A_round_hole_is_an_inside_radius_and_a_disc_an_outside_one()
    {
        var ring = Measure(Shapes.Ring(20, 17));

        Assert.Equal((17, 20), (ring.MinInsideRadius!.Radius, ring.MinOutsideRadius!.Radius));
        Assert.Null(ring.SharpestCorner);
    }

    [Fact]
    public void Without_arcs_there_is_no_radius()
    {
        var square = Measure(Shapes.Rectangle(10, 10));

        Assert.Null(square.MinInsideRadius);
        Assert.Null(square.MinOutsideRadius);
    }

    [Fact]
    public void An_arc_as_flat_as_rounding_has_no_radius()
    {
        var square =
            Measure(Region.FromLoops(
                [Loop.FromCorners([(new(0, 0), 0), (new(10, 0), 1e-7), (new(10, 10), -1e-7), (new(0, 10), 0)])]));

        Assert.Null(square.MinInsideRadius);
        Assert.Null(square.MinOutsideRadius);
    }

    [Theory]
    [InlineData(0, 0, 100, 0, 80, 30)]
    [InlineData(0, 0, 30, 0, 0, 40)]
    [InlineData(0, 0, 100, 0, 50, 0.5)]
    public void A_triangle_has_the_least_of_its_angles(double ax, double ay, double bx, double by, double cx, double cy)
    {
        Vec2[] corners = [new(ax, ay), new(bx, by), new(cx, cy)];
        // By the law of cosines, from the lengths of the sides.
        var (a, b, c) = (corners[1].DistanceTo(corners[2]), corners[0].DistanceTo(corners[2]), corners[0].DistanceTo(corners[1]));
        var angles = new[] { Angle(a, b, c), Angle(b, c, a), Angle(c, a, b) };

        var corner = Measure(Region.FromLoops([Loop.Polygon(corners)])).SharpestCorner!;

        Assert.Equal(angles.Min(), corner.Angle, 1e-5);
        Assert.Equal(corners[Array.IndexOf(angles, angles.Min())], corner.Place);
        Assert.False(corner.IsInside);

        static double Angle(double opposite, double one, double other) =>
            Math.Acos((one * one + other * other - opposite * opposite) / (2 * one * other)) * 180 / Math.PI;
    }

    [Fact]
    public void A_five_pointed_star_has_tips_of_36_degrees_and_names_the_lowest_leftmost()
    {
        var inner = 10 * Math.Sin(Math.PI / 10) / Math.Sin(7 * Math.PI / 10);
        var star = Region
            .FromLoops([
                Loop.Polygon(Enumerable.Range(0, 10).Select(i => new Vec2(0, i % 2 == 0 ? 10 : inner).Turned(Math.PI * i / 5)))]);

        var corner = Measure(star).SharpestCorner!;

        Assert.Equal(36, corner.Angle, Near);
        At(-10 * Math.Sin(Math.PI / 5), -10 * Math.Cos(Math.PI / 5), corner.Place);
    }

    [Fact]
    public void A_notch_is_an_inside_corner()
    {
        var corner = Measure(Shapes.Polygon((0, 0), (60, 0), (60, 30), (32, 30), (30, 5), (28, 30), (0, 30))).SharpestCorner!;

        Assert.True(corner.IsInside);
        Assert.Equal(2 * Math.Atan(2.0 / 25) * 180 / Math.PI, corner.Angle, Near);
        At(30, 5, corner.Place);
    }

    [Fact]
    public void Corners_of_arcs_are_measured_between_their_tangents()
    {
        // A lens of two arcs of 90° each: their tangents meet at 90°.
        var corner =
            Measure(Region.FromLoops(
                [Loop.FromCorners([(new(0, 0), Shapes.QuarterTurn), (new(20, 0), Shapes.QuarterTurn)])])).SharpestCorner!;

        Assert.Equal(90, corner.Angle, Near);
    }

    [Fact]
    public void The_tips_of_a_crescent_between_touching_circles_have_no_angle()
    {
        // A disc of 20 mm from which a disc of 15 mm is taken that touches it inside at (20, 0): one loop through that point.
        var tips = Measure(
            Region.FromLoops([Loop.FromCorners([(new(20, 0), 1), (new(-20, 0), 1), (new(20, 0), -1), (new(-10, 0), -1)])]));

        Assert.Equal(0, tips.SharpestCorner!.Angle, Near);
        Assert.False(tips.SharpestCorner.IsInside);
        At(20, 0, tips.SharpestCorner.Place);
    }

    [Theory]
    [InlineData(359, true)]
    [InlineData(361, false)]
    public void Joints_that_turn_by_less_than_a_degree_are_no_corners(int corners, bool hasCorners)
    {
        var corner = Measure(Region.FromLoops([Regular(corners, 50)])).SharpestCorner;

        Assert.Equal(hasCorners, corner is not null);
        if (corner is not null) Assert.Equal(180 - 360.0 / corners, corner.Angle, Near);
    }
}
