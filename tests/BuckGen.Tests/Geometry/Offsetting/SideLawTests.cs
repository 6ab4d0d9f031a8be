using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Tests.Geometry.Offsetting;

/// <summary>Edges beside a rectangle of 100 x 60 mm that keep their distance and yet are none of its offset by 3 mm.</summary>
public class SideLawTests
{
    private static readonly Loop Grown = Loop.Rectangle(new(-3, -3, 103, 63)), Shrunk = Loop.Rectangle(new(3, 3, 97, 57));

    [Fact]
    public void Grown_wood_has_its_edge_in_the_air_and_shrunk_wood_in_the_material()
    {
        Assert.Null(Fault(Grown, 3));
        Assert.Null(Fault(Shrunk, -3));
        Assert.Equal("the edge at (50.000, 3.000) lies in the material", Fault(Shrunk, 3));
        Assert.Equal("the edge at (50.000, -3.000) lies in the air", Fault(Grown, -3));
    }

    [Fact]
    public void Wood_lies_to_the_left_of_every_edge()
    {
        Assert.EndsWith("has its material on the wrong side", Fault(Grown.Reversed(), 3));
        Assert.EndsWith("has its material on the wrong side", Fault(Shrunk.Reversed(), -3));
    }

    [Fact]
    public void Every_edge_longer_than_twice_the_distance_is_looked_at() =>
        // Only the right side runs within the wood.
        Assert.Equal("the edge at (97.000, 30.000) lies in the material", Fault(Loop.Rectangle(new(-3, -3, 97, 63)), 3));

    [Fact]
    public void Of_short_edges_the_longest_is_looked_at()
    {
        // All of them are shorter than 120 mm; the longest lies in the wood, the others beside and above it.
        var (source, loop) = (Shapes.Rectangle(200, 103), Loop.Polygon(new(-20, 110), new(-20, 90), new(80, 102)));

        Assert.EndsWith("lies in the material", new SideLaw(new(source.Segments), new(source), 60, null, 0.01).Fault(loop));
    }

    [Theory]
    [InlineData(0.005, false)]
    [InlineData(0.02, true)]
    public void The_direction_of_pieces_below_the_tolerance_is_left_to_rounding(double back, bool told)
    {
        // A piece of the lower edge runs back.
        var loop = Loop.Polygon(new(-3, -3), new(50, -3), new(50 - back, -3), new(103, -3), new(103, 63), new(-3, 63));

        Assert.Equal(told, Fault(loop, 3) is not null);
    }

    [Fact]
    public void Beyond_the_distance_no_direction_is_judged() =>
        // 3.025 mm away: a hundredth farther nothing lies within the distance and twice the tolerance.
        Assert.Null(Fault(Loop.Rectangle(new(-3.025, -3.025, 103.025, 63.025)).Reversed(), 3));

    [Theory]
    [InlineData(0.009, false)]
    [InlineData(0.011, true)]
    public void As_near_to_the_outline_as_the_tolerance_both_sides_are_right(double inside, bool told) =>
        Assert.Equal(told, Fault(Loop.Rectangle(new(inside, inside, 100 - inside, 60 - inside)), 0.001)!.EndsWith("lies in the material", StringComparison.Ordinal));

    private static string? Fault(Loop loop, double distance)
    {
        var source = Shapes.Rectangle(100, 60);
        return new SideLaw(new(source.Segments), new(source), distance, null, 0.01).Fault(loop);
    }
}
