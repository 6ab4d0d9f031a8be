using BuckGen.Geometry;
using Xunit;
using static BuckGen.Tests.Outlines.DxfText;

namespace BuckGen.Tests.Outlines;

public class CrossingTests
{
    [Fact]
    public void A_bow_tie_is_refused_where_it_crosses() =>
        Assert.StartsWith("the outline crosses itself at (30.000, 20.000) (LWPOLYLINE at line",
            Reading.Refusal(Polyline(true, new(0, 0), new(60, 40), new(60, 0), new(0, 40))));

    [Fact]
    public void Outlines_that_cross_are_refused_with_both_places() =>
        Assert.Contains("outlines cross at (30.000, 10.000), (10.000, 30.000)", Reading.Refusal(Rectangle(0, 0, 30, 30), Rectangle(10, 10, 40, 40)));

    [Fact]
    public void Circles_that_cross_are_found_by_their_arcs() =>
        Assert.Contains("(0.000, 4.000)", Reading.Refusal(Circle(-3, 0, 5), Circle(3, 0, 5)));

    [Fact]
    public void A_crossing_at_a_corner_is_found() =>
        Assert.Contains("(30.000, 15.000)", Reading.Refusal(
            Rectangle(0, 0, 30, 30), Polyline(true, new(20, 15), new(30, 15), new(40, 5), new(40, 25), new(25, 22))));

    [Fact]
    public void A_crossing_along_a_shared_stretch_is_found() =>
        Assert.Contains("outlines cross", Reading.Refusal(
            Rectangle(0, 0, 30, 30), Polyline(true, new(20, 10), new(30, 10), new(30, 20), new(40, 20), new(40, 40), new(20, 40))));

    [Theory]
    [InlineData(10)]
    [InlineData(9.995)]
    public void Outlines_that_touch_or_dip_in_less_than_the_tolerance_are_taken(double distance)
    {
        var outline = Reading.Dxf(Circle(0, 0, 5), Circle(distance, 0, 5), Rectangle(-5, 5, 10, 3));

        Assert.Equal(3, outline.Region.Islands.Length);
    }

    [Fact]
    public void A_dip_beyond_the_tolerance_is_refused() =>
        Assert.Contains("outlines cross", Reading.Refusal(Circle(0, 0, 5), Circle(9.95, 0, 5)));

    [Fact]
    public void A_star_in_one_stroke_is_refused_at_all_five_places()
    {
        var tips = Enumerable.Range(0, 5).Select(i => new Vec2(0, 40).Turned(i * 0.8 * Math.PI));

        var refusal = Reading.Refusal(Polyline(true, tips));

        Assert.Equal(5, refusal.Split("), (").Length);
        Assert.Contains("0.000, -15.279)", refusal);
    }
}
