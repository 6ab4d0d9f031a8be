using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Tests.Geometry.Offsetting;

public class ClosenessTests
{
    private static readonly Loop Left = Loop.Rectangle(new(0, 0, 10, 10)), Middle = Loop.Rectangle(new(14, 0, 24, 10)), Right = Loop.Rectangle(new(30, 0, 40, 10));

    [Fact]
    public void Loops_meet_one_after_the_other_the_nearest_first()
    {
        // The middle one meets the left one first, 4 mm off, whatever the order.
        foreach (Loop[] row in new Loop[][] { [Left, Middle, Right], [Left, Right, Middle] })
            Assert.Equal([14, 30], Closeness.Joints(row).Select(j => j.X));
    }

    [Fact]
    public void One_loop_meets_none() => Assert.Empty(Closeness.Joints([Left]));

    [Theory]
    [InlineData(0)]
    [InlineData(2.5)]
    [InlineData(5)]
    [InlineData(7.5)]
    public void The_nearest_place_may_lie_within_a_side(double y)
    {
        var tip = Loop.Polygon(new(12, y), new(20, y - 1), new(20, y + 1));

        Assert.Equal(new(10, y), Closeness.Place(Left, [tip]));
    }

    [Fact]
    public void Of_many_others_the_nearest_counts()
    {
        Assert.Equal(14, Closeness.Place(Middle, [Right, Left]).X);
        Assert.Equal(24, Closeness.Place(Middle, [Right]).X);
    }
}
