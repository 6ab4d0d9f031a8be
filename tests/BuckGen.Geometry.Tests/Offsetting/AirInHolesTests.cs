using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class AirInHolesTests
{
    /// <summary>A plate with a hole in which an island stands that has a hole of its own, and beside it a small hole.</summary>
    private static readonly AirInHoles Air = new(Region.FromLoops(
    [
        Loop.Rectangle(new(0, 0, 100, 60)), Loop.Rectangle(new(10, 10, 50, 50)), Loop.Rectangle(new(20, 20, 40, 40)),
        Loop.Rectangle(new(25, 25, 35, 35)), Loop.Circle(new(75, 30), 5),
    ]));

    [Theory]
    [InlineData(15, 30, 1600)]
    [InlineData(22, 30, 1600)]
    [InlineData(30, 30, 100)]
    [InlineData(75, 30, 78.54)]
    public void A_point_belongs_to_the_innermost_hole_round_it(double x, double y, double area) =>
        Assert.Equal(area, Math.Abs(Air.Holes[Air.At(new(x, y))].SignedArea), 0.01);

    [Theory]
    [InlineData(5, 5)]
    [InlineData(60, 30)]
    [InlineData(71, 26)]
    [InlineData(-5, 30)]
    public void Outside_all_holes_there_is_none(double x, double y) => Assert.Equal(-1, Air.At(new(x, y)));

    [Fact]
    public void A_point_of_the_air_stands_on_no_island()
    {
        Assert.Equal(3, Air.Holes.Length);
        for (var i = 0; i < 3; i++)
        {
            var p = Air.PointIn(i);
            Assert.Equal(i, Air.At(p));
            var onIsland = new Bounds(20, 20, 40, 40).Contains(p) && !new Bounds(25, 25, 35, 35).Contains(p);
            Assert.False(onIsland, p.ToString());
        }
    }

    [Fact]
    public void A_region_without_holes_has_no_air()
    {
        var none = new AirInHoles(Shapes.Rectangle(10, 10));

        Assert.Empty(none.Holes);
        Assert.Equal(-1, none.At(new(5, 5)));
    }
}
