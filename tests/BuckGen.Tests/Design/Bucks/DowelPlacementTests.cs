using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>Where dowels go when their centres may lie in a given region.</summary>
public class DowelPlacementTests
{
    [Fact]
    public void The_farthest_two_corners_and_the_lowest_that_makes_the_largest_triangle() =>
        // Sides of 107.7, 100 and 40 mm, and of both triangles as large the one with the lower corner.
        Assert.Equal([new(-10, 20), new(90, 60), new(90, 20)], DowelPlacement.Choose(Shapes.RectangleAt(-10, 20, 100, 40), 12));

    [Fact]
    public void All_three_distances_differ_by_three_millimetres()
    {
        // A third corner of a square would be as far from both others.
        var p = DowelPlacement.Choose(Shapes.Rectangle(60, 60), 12);

        Assert.Equal(3, p.Length);
        Assert.Equal(Math.Sqrt(7200), p[0].DistanceTo(p[1]), 1e-9);
        double[] sides = [p[0].DistanceTo(p[1]), p[1].DistanceTo(p[2]), p[2].DistanceTo(p[0])];
        for (var i = 0; i < 3; i++) Assert.True(Math.Abs(sides[i] - sides[(i + 1) % 3]) >= 3);
        // Two millimetres on, with 240 places along 240 mm.
        Assert.InRange(sides.Min(), 56, 60);
    }

    [Fact]
    public void Neither_side_of_a_slim_triangle_is_as_long_as_the_other()
    {
        // Two corners at one end, as far from the other end; the first pair found shares that end as its second place, or as its
        // first.
        foreach (var slim in
            (Region[])[Shapes.Polygon((0, 0), (100, -10), (100, 10)), Shapes.Polygon((0, 0), (10, 100), (-10, 100))])
        {
            var p = DowelPlacement.Choose(slim, 12);
            for (var i = 0; i < p.Length; i++)
                Assert.True(p.Length == 2
                    || Math.Abs(p[i].DistanceTo(p[(i + 1) % 3]) - p[(i + 1) % 3].DistanceTo(p[(i + 2) % 3])) >= 3);
        }
    }

    [Theory]
    [InlineData(2.9, 2)]
    [InlineData(4, 3)]
    public void A_triangle_is_at_least_three_millimetres_high(double height, int dowels) =>
        Assert.Equal(dowels, DowelPlacement.Choose(Shapes.Rectangle(60, height), 12).Length);

    [Theory]
    [InlineData(49, true)]
    [InlineData(51, false)]
    public void Two_dowels_stand_at_least_the_distance_apart(double least, bool any) =>
        // A triangle of 30, 40 and 50 mm.
        Assert.Equal(any, DowelPlacement.Choose(Shapes.Polygon((0, 0), (40, 0), (0, 30)), least).Length > 0);

    [Fact]
    public void The_third_keeps_the_distance_too()
    {
        // It may not stand within 35 mm of either end.
        var places = DowelPlacement.Choose(Shapes.Polygon((0, 0), (40, 0), (0, 30)), 35);

        Assert.Equal(2, places.Length);
    }

    [Fact]
    public void Nothing_allowed_gives_no_dowels() => Assert.Empty(DowelPlacement.Choose(Region.Empty, 12));

    [Fact]
    public void A_jagged_region_of_many_pieces_gives_places_on_its_edge()
    {
        var star = Shapes.Polygon([.. Enumerable.Range(0, 2000).Select(i => (i % 2 == 0 ? 50.0 : 49.0) is var r
            ? (r * Math.Cos(Math.PI * i / 1000), r * Math.Sin(Math.PI * i / 1000)) : default)]);

        var places = DowelPlacement.Choose(star, 12);

        Assert.Equal(3, places.Length);
        Assert.InRange(places[0].DistanceTo(places[1]), 98, 100.001);
        Assert.All(places, p => Assert.Equal(0, star.DistanceToEdge(p), 1e-9));
    }
}
