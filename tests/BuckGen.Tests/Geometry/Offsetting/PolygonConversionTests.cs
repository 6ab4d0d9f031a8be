using BuckGen.Geometry.Offsetting;
using NetTopologySuite.Geometries;
using Xunit;

namespace BuckGen.Tests.Geometry.Offsetting;

public sealed class PolygonConversionTests
{
    /// <summary>Found by random settings: channels cut 4 m from the origin left such a corner, and the kerf was then offset from a side of no length.</summary>
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
        Assert.Equal(5, PolygonConversion.FromGeometry(Square(new(100, 4000), new(100, 4000.001)), 0.0001).Islands.Single().Outer.Segments.Length);

    private static Polygon Square(params Coordinate[] corner) =>
        new GeometryFactory().CreatePolygon([new(0, 4000), .. corner, new(100, 4100), new(0, 4100), new(0, 4000)]);
}
