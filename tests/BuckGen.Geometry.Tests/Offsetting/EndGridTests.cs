using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class EndGridTests
{
    private static readonly EndGrid Grid = new([new(0, 0), new(1, 0), new(0.5, 0.5), new(-3, -3)], 1);

    [Fact]
    public void Points_are_near_up_to_the_reach()
    {
        Assert.Equal([0, 1, 2], Grid.Near(new(0.5, 0)).Select(n => n.Number).Order());
        Assert.Equal([3], Grid.Near(new(-3, -2)).Select(n => n.Number));
        Assert.Empty(Grid.Near(new(-3, -1.9)));
    }

    [Theory]
    [InlineData(10)]
    [InlineData(0.1)]
    public void The_squares_of_the_grid_follow_the_reach(double reach)
    {
        var grid = new EndGrid([new(0, 0), new(reach, 0)], reach);

        Assert.Equal([0, 1], grid.Near(new(0.9 * reach, 0)).Select(n => n.Number).Order());
        Assert.Equal([1], grid.Near(new(1.1 * reach, 0)).Select(n => n.Number));
    }

    [Fact]
    public void The_distance_comes_with_them() =>
        Assert.Equal([(0, 0), (1, 1.0)], Grid.Near(new(0, 0)).Where(n => n.Number < 2).OrderBy(n => n.Number));

    [Theory]
    [InlineData(0.9, 0)]
    [InlineData(-0.9, 0)]
    [InlineData(0, 0.9)]
    [InlineData(0, -0.9)]
    [InlineData(0.7, 0.7)]
    [InlineData(-0.7, -0.7)]
    [InlineData(0.7, -0.7)]
    public void Points_are_near_across_the_lines_of_the_grid(double x, double y)
    {
        // Wherever the lines run, one of these places has them between itself and its point.
        for (var shift = 0.0; shift < 3; shift += 0.125)
            Assert.Equal([0], new EndGrid([new(shift + x, shift + y)], 1).Near(new(shift, shift)).Select(n => n.Number));
    }

    [Fact]
    public void Points_in_one_place_are_all_found() =>
        Assert.Equal(3, new EndGrid([new(5, 5), new(5, 5), new(5, 5)], 0.1).Near(new(5, 5)).Count());
}
