using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>Offsets of which a part of the edge is gone.</summary>
public class MissingEdgesTests
{
    [Theory]
    // A side of 3 mm is checked in 6 places, 0.5 mm apart, when it is offset by 0.5 mm.
    [InlineData(0.25)]
    [InlineData(1.25)]
    [InlineData(2.75)]
    public void A_side_is_checked_at_every_distance(double gone)
    {
        var square = Shapes.Rectangle(3, 3);
        // 0.3 mm of the lower edge lie 1 mm too low.
        var dented = Shapes.Polygon(
            (-0.5, -0.5), (gone - 0.15, -0.5), (gone - 0.15, -1.5), (gone + 0.15, -1.5), (gone + 0.15, -0.5), (3.5, -0.5),
            (3.5, 3.5), (-0.5, 3.5));

        Assert.Equal($"no edge runs through ({gone:F3}, -0.500)", Fault(square, dented, 0.5));
        Assert.Null(Fault(square, Shapes.RectangleAt(-0.5, -0.5, 4, 4), 0.5));
    }

    [Fact]
    public void A_round_hole_that_is_filled_is_missed()
    {
        var ring = Shapes.Ring(30, 10);

        Assert.Null(Fault(ring, Shapes.Ring(33, 7), 3));
        Assert.StartsWith("no edge runs through", Fault(ring, Shapes.Disc(33), 3));
    }

    [Fact]
    public void What_a_mitre_covers_needs_no_edge()
    {
        var square = Shapes.Rectangle(30, 30);

        Assert.Null(Fault(square, Shapes.RectangleAt(-3, -3, 36, 36), 3));
        Assert.Equal("no edge runs through (32.121, -2.121)",
            Fault(square, Shapes.RectangleAt(-3, -3, 36, 36), 3, mitred: false));
    }

    private static string? Fault(Region source, Region result, double distance, bool mitred = true) =>
        new MissingEdges(source, new(source.Segments), new(source), distance, mitred ? new(source, distance, 5) : null, 0.01)
            .Fault(result, TestContext.Current.CancellationToken);
}
