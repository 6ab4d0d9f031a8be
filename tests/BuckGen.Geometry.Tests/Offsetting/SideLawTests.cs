using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

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
    public void Every_edge_longer_than_twice_the_distance_is_checked() =>
        // Only the right side runs within the wood.
        Assert.Equal("the edge at (97.000, 30.000) lies in the material", Fault(Loop.Rectangle(new(-3, -3, 97, 63)), 3));

    [Fact]
    public void Of_short_edges_the_longest_is_checked()
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

    [Fact]
    public void An_edge_of_four_times_the_distance_is_checked()
    {
        // 2 mm of the lower edge lie 0.5 mm inside instead of outside.
        var loop = Loop.Polygon(
            new(-0.5, -0.5), new(50, -0.5), new(50, 0.5), new(52, 0.5), new(52, -0.5), new(100.5, -0.5), new(100.5, 60.5),
            new(-0.5, 60.5));

        Assert.Equal("the edge at (51.000, 0.500) lies in the material", Fault(loop, 0.5));
    }

    [Fact]
    public void At_a_distance_below_the_tolerance_the_sides_are_distinguished_as_well()
    {
        // A power of two, so that nothing is rounded: 0.001953125 mm.
        const double Distance = 1.0 / 512;
        var grown = Loop.Rectangle(new(-Distance, -Distance, 100 + Distance, 60 + Distance));

        Assert.Null(Fault(grown, Distance));
        Assert.EndsWith("has its material on the wrong side", Fault(grown.Reversed(), Distance));
    }

    [Theory]
    // A mitre covers the square from (-10, -10) to (0, 0) and 0.01 mm round it. Of the two sides of the edge the far one counts.
    [InlineData(10, -10.005, -0.15, -10.005, -0.05, true)]
    [InlineData(-10, -10.005, -0.15, -10.005, -0.05, true)]
    [InlineData(10, -9.935, 0.047, -9.865, -0.023, false)]
    [InlineData(-10, -9.935, 0.047, -9.865, -0.023, false)]
    public void Where_a_mitre_covers_its_far_side_the_direction_of_an_edge_is_not_judged(
        double distance, double x1, double y1, double x2, double y2, bool told)
    {
        // Wood that grows by 10 mm, or air that does.
        var plate = Shapes.Rectangle(100, 60);
        var source = distance > 0 ? plate : Shapes.Union(Shapes.RectangleAt(-50, -50, 200, 160), plate);
        // The edge has the corner on the wrong side; what closes the loop lies too far away to be judged.
        var loop = Loop.Polygon(new(x1, y1), new(x2, y2), new(-30, -0.1));
        var law = new SideLaw(new(source.Segments), new(source), distance, new(source, distance, 5), 0.01);

        Assert.Equal(told,
            law.Fault(distance > 0 ? loop : loop.Reversed())?.EndsWith("has its material on the wrong side",
                StringComparison.Ordinal) == true);
    }

    [Theory]
    [InlineData(0.009, false)]
    [InlineData(0.011, true)]
    public void As_near_to_the_outline_as_the_tolerance_both_sides_are_right(double inside, bool told) =>
        Assert.Equal(told,
            Fault(Loop.Rectangle(new(inside, inside, 100 - inside, 60 - inside)), 0.001)!
                .EndsWith("lies in the material", StringComparison.Ordinal));

    private static string? Fault(Loop loop, double distance)
    {
        var source = Shapes.Rectangle(100, 60);
        return new SideLaw(new(source.Segments), new(source), distance, null, 0.01).Fault(loop);
    }
}
