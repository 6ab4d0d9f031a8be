using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class SegmentIndexTests
{
    private static readonly SegmentIndex Index =
        new([new(new(0, 0), new(10, 0)), new(new(0, 5), new(10, 5)), new(new(20, 0), new(20, 10))]);

    [Theory]
    [InlineData(3, 1.9)]
    [InlineData(2, 2)]
    [InlineData(1.9, double.PositiveInfinity)]
    public void A_distance_is_known_within_the_reach(double reach, double distance) =>
        Assert.Equal(distance, Index.DistanceWithin(new(5, reach == 3 ? 1.9 : 2), reach));

    [Fact]
    public void The_reach_is_round_although_the_index_is_square() =>
        // 3 mm to the right and 4 mm up: 5 mm away.
        Assert.Equal(double.PositiveInfinity, Index.DistanceWithin(new(23, 14), 4.5));

    [Fact]
    public void The_nearest_of_all_counts()
    {
        Assert.Equal(1, Index.Distance(new(5, 4)));
        Assert.Equal(80, Index.Distance(new(100, 5)));
        Assert.Equal(2, Index.DistanceWithin(new(5, 3), 4));
    }

    [Fact]
    public void Pieces_are_found_by_a_rectangle_that_meets_them()
    {
        Assert.Equal([0, 1], Index.IndicesIntersecting(new(4, -1, 6, 6)).Order());
        Assert.Equal(20, Assert.Single(Index.Intersecting(new(15, 0, 25, 1))).Start.X);
        Assert.Empty(Index.Intersecting(new(11, 0, 19, 10)));
    }
}
