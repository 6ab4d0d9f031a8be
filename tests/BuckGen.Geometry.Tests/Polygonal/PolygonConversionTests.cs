using BuckGen.Geometry.Polygonal;
using NetTopologySuite.Geometries;
using Xunit;

namespace BuckGen.Geometry.Tests.Polygonal;

public sealed class PolygonConversionTests
{
    /// <summary>
    /// Found by random settings: channels cut 4 m from the origin left such a corner, and the kerf was then offset from a side
    /// of no length.
    /// </summary>
    [Fact]
    public void A_corner_a_rounding_apart_from_the_one_before_is_left_out()
    {
        var region = PolygonConversion.FromGeometry(Square(new(100, 4000), new(100, 4000.0000000000005)), 0.001);

        Assert.Equal(4, region.Islands.Single().Outer.Segments.Length);
        Assert.Equal(10000, region.Area, 1e-6);
        Assert.All(region.Segments, s => Assert.True(s.Length > 99));
    }

    [Fact]
    public void A_short_side_that_can_be_seen_stays() =>
        Assert.Equal(5,
            PolygonConversion.FromGeometry(Square(new(100, 4000), new(100, 4000.001)), 0.0001).Islands
                .Single().Outer.Segments.Length);

    [Fact]
    public void A_triangle_keeps_three_corners_however_small_it_is()
    {
        var factory = new GeometryFactory();
        var doubled = factory.CreatePolygon([new(0, 0), new(10, 0), new(10, 1e-9), new(0, 10), new(0, 0)]);
        var tiny = factory.CreatePolygon([new(0, 0), new(5e-7, 0), new(0, 5e-7), new(0, 0)]);

        Assert.Equal(3, PolygonConversion.FromGeometry(doubled, 0.001).Segments.Count());
        Assert.Equal(3, PolygonConversion.FromGeometry(tiny, 1e-9).Segments.Count());
    }

    [Theory]
    // A chord of angle a stands off by r·(1 - cos(a/2)): half a circle of 10 mm needs 11.1 chords of 0.1 mm, so 12.
    [InlineData(10, 0.1, 24)]
    [InlineData(10, 0.01, 72)]
    // Half a circle has two at least, however small it is.
    [InlineData(0.1, 1, 4)]
    [InlineData(0.01, 1, 4)]
    public void A_circle_gets_as_many_chords_as_the_error_asks_for(double radius, double chord, int corners)
    {
        var points = PolygonConversion.Flattened(Loop.Circle(new(3, 4), radius), chord);

        Assert.Equal(corners, points.Count);
        Assert.All(points, p => Assert.Equal(radius, p.DistanceTo(new(3, 4)), 1e-9));
    }

    [Fact]
    public void Lines_keep_their_corners() =>
        Assert.Equal([new(0, 0), new(10, 0), new(10, 5), new(0, 5)],
            PolygonConversion.Flattened(Loop.Rectangle(new(0, 0, 10, 5)), 0.01));

    [Fact]
    public void Islands_and_holes_come_back_as_they_were()
    {
        var region = Shapes.Union(Shapes.Ring(20, 10), Shapes.RectangleAt(30, 0, 10, 10));

        var polygons = PolygonConversion.ToGeometry(region, 0.001);
        var back = PolygonConversion.FromGeometry(polygons, 0.0011);

        Assert.Equal(2, polygons.NumGeometries);
        Assert.Equal(region.Area, polygons.Area, 0.1);
        Assert.Equal((2, 1), (back.Islands.Length, back.HoleCount));
        Assert.Equal(region.Area, back.Area, 1e-6);
    }

    [Fact]
    public void What_has_no_area_gives_no_island()
    {
        var factory = new GeometryFactory();

        Assert.True(PolygonConversion.FromGeometry(factory.CreatePolygon(), 0.01).IsEmpty);
        Assert.True(PolygonConversion.FromGeometry(factory.CreatePoint(new Coordinate(1, 2)), 0.01).IsEmpty);
    }

    private static Polygon Square(params Coordinate[] corner) =>
        new GeometryFactory().CreatePolygon([new(0, 4000), .. corner, new(100, 4100), new(0, 4100), new(0, 4000)]);
}
