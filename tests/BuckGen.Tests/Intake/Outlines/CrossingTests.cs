using BuckGen.Geometry;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

public class CrossingTests
{
    [Fact]
    public void A_bow_tie_is_refused_where_it_crosses() =>
        Assert.StartsWith("the outline crosses itself at (30.000, 20.000) (LWPOLYLINE at line",
            Reading.Refusal(Polyline(true, new(0, 0), new(60, 40), new(60, 0), new(0, 40))));

    [Fact]
    public void Outlines_that_cross_are_refused_with_both_places() =>
        Assert.Contains("outlines cross at (30.000, 10.000), (10.000, 30.000)",
            Reading.Refusal(Rectangle(0, 0, 30, 30), Rectangle(10, 10, 40, 40)));

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
            Rectangle(0, 0, 30, 30),
            Polyline(true, new(20, 10), new(30, 10), new(30, 20), new(40, 20), new(40, 40), new(20, 40))));

    /// <summary>
    /// At the corner (60, 15) two outlines part without crossing. The first circle that shows it is a millionth of the edge wide.
    /// </summary>
    [Theory]
    [InlineData(100)]
    [InlineData(60_000)]
    public void Crossings_on_an_edge_shared_with_another_outline_are_found_and_no_others_however_long_it_is(double width)
    {
        var refusal = Reading.Refusal(Rectangle(5, 5, 70, 50), Rectangle(20, 15, width, 30), Rectangle(20, 15, 40, 30));

        Assert.Contains("(75.000, 15.000)", refusal);
        Assert.Contains("(75.000, 45.000)", refusal);
        Assert.Equal(2, refusal.Split("), (").Length);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(49)]
    public void A_copy_moved_along_its_own_edge_is_refused(double shift) =>
        Assert.Contains("outlines cross", Reading.Refusal(Rectangle(0, 0, 50, 30), Rectangle(shift, 0, 50, 30)));

    [Fact]
    public void A_copy_moved_along_its_own_edge_and_a_hair_across_is_refused() =>
        Assert.Contains("outlines cross", Reading.Refusal(Rectangle(0.0005, 5, 70, 50), Rectangle(5, 5.00005, 70, 50)));

    [Fact]
    public void A_copy_turned_along_its_own_arcs_is_refused() =>
        Assert.Contains("outlines cross", Reading.Refusal(Slot(0), Slot(0.3)));

    [Fact]
    public void An_outline_that_goes_round_twice_in_one_stroke_is_refused_and_not_counted_double()
    {
        Vec2[] corners = [new(0, 0), new(50, 0), new(50, 30), new(0, 30)];
        const string ring =
            "0\nLWPOLYLINE\n70\n1\n10\n0\n20\n0\n42\n1\n10\n9\n20\n0\n42\n1\n10\n0\n20\n0\n42\n1\n10\n9\n20\n0\n42\n1\n";

        Assert.StartsWith("the outline runs the same way twice at (25.000, 0.000)",
            Reading.Refusal(Polyline(true, [.. corners, .. corners])));
        Assert.StartsWith("the outline runs the same way twice at (4.500, ", Reading.Refusal(ring));
    }

    [Fact]
    public void A_slit_that_leads_to_a_hole_and_back_is_taken()
    {
        var outline = Reading.Dxf(Polyline(true,
            new(0, 0), new(50, 0), new(50, 30), new(30, 30), new(30, 20), new(30, 10), new(20, 10), new(20, 20), new(30, 20),
            new(30, 30), new(0, 30)));

        Assert.Equal(1500 - 100, outline.Region.Area, 1e-9);
    }

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

    /// <summary>A curved slot round the origin, from one angle on.</summary>
    private static string Slot(double from)
    {
        var (a, b) = (new Vec2(1, 0).Turned(from), new Vec2(1, 0).Turned(from + 1));
        return string.Concat(Format(new(a * 20, b * 20, Math.Tan(0.25))), Format(new(b * 20, b * 10)),
            Format(new(b * 10, a * 10, -Math.Tan(0.25))), Format(new(a * 10, a * 20)));
    }
}
