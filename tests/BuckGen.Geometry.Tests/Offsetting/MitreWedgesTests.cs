using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>
/// Mitres of 10 mm round a rectangle: each fills a square of 10 mm beside its corner, as far as the limit lets it.
/// </summary>
public class MitreWedgesTests
{
    private static readonly Region Rectangle = Shapes.Rectangle(100, 60);

    [Theory]
    [InlineData(-9, -9, true)]
    [InlineData(-10, -10, true)]
    [InlineData(-10, 0, true)]
    [InlineData(0, -10, true)]
    [InlineData(-10.5, -9, false)]
    [InlineData(-9, -10.5, false)]
    [InlineData(109, 69, true)]
    [InlineData(-9, 69, true)]
    [InlineData(-9, 1, false)]
    [InlineData(1, -9, false)]
    [InlineData(50, -5, false)]
    [InlineData(1, 1, false)]
    public void A_mitre_covers_the_square_at_its_corner(double x, double y, bool covered) =>
        Assert.Equal(covered, new MitreWedges(Rectangle, 10, 5).Cover(new(x, y), 0));

    [Theory]
    [InlineData(-10.5, -9)]
    [InlineData(-9, -10.5)]
    [InlineData(-9, 0.5)]
    [InlineData(0.5, -9)]
    public void A_slack_widens_it_on_all_sides(double x, double y)
    {
        Assert.True(new MitreWedges(Rectangle, 10, 5).Cover(new(x, y), 1));
        Assert.False(new MitreWedges(Rectangle, 10, 5).Cover(new(x, y), 0.4));
    }

    [Theory]
    // 12.45 and 13.15 mm from the corner, where the limit lies at 12 mm; and 14 mm aside, where the side lies at 10 mm.
    [InlineData(-8.8, -8.8, 1.2, 1, true)]
    [InlineData(-9.3, -9.3, 1.2, 1, false)]
    [InlineData(-14, 0, 1, 5, true)]
    public void A_slack_widens_it_at_its_limit(double x, double y, double limit, double slack, bool covered) =>
        Assert.Equal(covered, new MitreWedges(Rectangle, 10, limit).Cover(new(x, y), slack));

    [Theory]
    // The limit lies 12 mm from the corner: at 12 / √2 = 8.485 mm along both sides.
    [InlineData(-8.4, -8.4, 1.2, true)]
    [InlineData(-8.6, -8.6, 1.2, false)]
    // A limit below 1 counts as 1: 10 / √2 = 7.07 mm.
    [InlineData(-7, -7, 0.5, true)]
    [InlineData(-7.1, -7.1, 0.5, false)]
    public void It_ends_at_the_limit(double x, double y, double limit, bool covered) =>
        Assert.Equal(covered, new MitreWedges(Rectangle, 10, limit).Cover(new(x, y), 0));

    [Fact]
    public void Corners_that_close_have_no_mitre()
    {
        // The hole reaches from (30, 20) to (70, 40).
        var frame = Shapes.Counter(100, 60, 40, 20);

        Assert.False(new MitreWedges(frame, 5, 5).Cover(new(33, 23), 0));
        Assert.True(new MitreWedges(frame, -5, 5).Cover(new(27, 17), 0));
        Assert.False(new MitreWedges(frame, -5, 5).Cover(new(3, 3), 0));
        Assert.False(new MitreWedges(frame, -5, 5).Cover(new(-3, -3), 0));
    }

    [Fact]
    public void A_corner_of_tiny_pieces_counts_as_one_corner_too()
    {
        // A chamfer of 0.001 mm makes two mitres of 45°, of which neither reaches the whole square.
        var chamfered = Shapes.Polygon((0.001, 0), (100, 0), (100, 60), (0, 60), (0, 0.001));

        Assert.True(new MitreWedges(chamfered, 10, 5).Cover(new(-9.9, -9.9), 0));
    }
}
