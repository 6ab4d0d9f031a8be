using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>
/// The corner of a square of 50 mm outside the circle that fills it: where the circle touches the sides are cusps, points without
/// an angle. Its edge is 100 + 25·π mm long, its area 2500·(1 - π/4) mm².
/// </summary>
public class CuspTests
{
    private static readonly Loop Spandrel =
        Loop.FromCorners([(new(50, 50), 0), (new(50, 0), 0), (new(100, 0), -Math.Tan(Math.PI / 8))]);

    private static readonly double Area = 2500 - 625 * Math.PI, Edge = 100 + 25 * Math.PI;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_cusp_grows_a_half_circle(bool bothSides)
    {
        var grown = new ArcOffsetter(bothSides ? MovedSides.Both : MovedSides.Drawn)
            .Offset(Region.FromLoops([Spandrel]), 5, CornerJoin.Round);

        // Whatever turns once round grows by its edge times the distance and a circle (Steiner).
        Assert.Equal(Area + Edge * 5 + Math.PI * 25, grown.Area, 1e-6);
        Assert.Equal(6, grown.OnlyLoop().Segments.Length);
    }

    [Theory]
    [InlineData(7)]
    [InlineData(13.3)]
    [InlineData(37.1)]
    [InlineData(61.7)]
    [InlineData(99.9)]
    [InlineData(123.4)]
    public void A_cusp_of_any_size_grows_alike(double side)
    {
        // To which side the edge seems to turn at a cusp is left to rounding.
        var source =
            Region.FromLoops(
                [Loop.FromCorners([.. Spandrel.Segments.Select(s => (s.Start * (side / 50) + new Vec2(0.1, 0.7), s.Bulge))])]);

        var grown = new ArcOffsetter().Offset(source, 5, CornerJoin.Round);

        Assert.Equal(side * side * (1 - Math.PI / 4) + side * (2 + Math.PI / 2) * 5 + Math.PI * 25, grown.Area, 1e-6);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Round_a_hole_with_cusps_wood_shrinks_as_much(bool bothSides)
    {
        var plate = Region.FromLoops([Loop.Rectangle(new(-100, -100, 200, 200)), Spandrel]);

        Assert.Equal(290 * 290 - (Area + Edge * 5 + Math.PI * 25),
            new ArcOffsetter(bothSides ? MovedSides.Both : MovedSides.Drawn).Offset(plate, -5, CornerJoin.Round).Area, 1e-6);
    }

    [Fact]
    public void Into_a_hole_with_cusps_wood_grows_without_a_join()
    {
        var plate = Region.FromLoops([Loop.Rectangle(new(-100, -100, 200, 200)), Spandrel]);

        var grown = new ArcOffsetter().Offset(plate, 2, CornerJoin.Round);

        Assert.Null(OffsetCheck.Fault(plate, grown, 2, CornerJoin.Round, 0.001));
        Assert.Equal(3, grown.Islands[0].Holes.Single().Segments.Length);
    }

    [Fact]
    public void A_needle_without_width_at_its_tip_is_mitred_to_the_limit()
    {
        var grown = new ArcOffsetter().Offset(Region.FromLoops([Spandrel]), 5, new(Corners.Mitre, 2));

        // The cusp at (100, 0) points to the right.
        Assert.Equal(110, grown.Bounds.MaxX, 1e-6);
        Assert.Equal(60, grown.Bounds.MaxY, 1e-6);
        Assert.Null(OffsetCheck.Fault(Region.FromLoops([Spandrel]), grown, 5, new(Corners.Mitre, 2), 0.001));
    }

    [Theory]
    [InlineData(5, 516)]
    // Of the mitre into the inner corner a triangle of height (√2 - 1.2)·2 mm is left as wood.
    [InlineData(1.2, 516.1835)]
    public void Wood_that_shrinks_from_an_inner_corner_leaves_it_mitred(double limit, double area)
    {
        // Bars of 10 mm become 6 mm wide: 46 x 6 mm and 40 x 6 mm.
        var bend = Shapes.Polygon((0, 0), (50, 0), (50, 10), (10, 10), (10, 50), (0, 50));
        var join = new CornerJoin(Corners.Mitre, limit);

        var shrunk = new ArcOffsetter().Offset(bend, -2, join);

        Assert.Equal(area, shrunk.Area, 0.0001);
        Assert.Null(OffsetCheck.Fault(bend, shrunk, -2, join, 0.001));
    }
}
