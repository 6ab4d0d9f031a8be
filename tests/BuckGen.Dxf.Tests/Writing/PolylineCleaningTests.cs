using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Writing;

public class PolylineCleaningTests
{
    [Fact]
    public void A_bulge_above_one_is_split_into_two_equal_arcs()
    {
        var bulge = Math.Tan(Math.PI * 1.5 / 4); // 270 degrees
        var written = Written(closed: false, new(0, 0, bulge), new(10, 0));
        var half = Math.Tan(Math.PI * 0.75 / 4);
        Assert.Equal(3, written.Length);
        Assert.Equal(half, written[0].Bulge, 6);
        Assert.Equal(half, written[1].Bulge, 6);
        Assert.Equal(0, written[2].Bulge);
        // The middle of a left-turning arc lies to the right of the chord: radius 5√2, centre (5, -5) for 270 degrees.
        Assert.Equal(5, written[1].X, 5);
        Assert.Equal(-5 - Math.Sqrt(50), written[1].Y, 5);
    }

    [Fact]
    public void A_negative_bulge_is_split_to_the_other_side()
    {
        var written = Written(closed: true, new(0, 0, -2.2), new(10, 0), new(10, 10));
        Assert.Equal(4, written.Length);
        Assert.Equal((5, 11), (written[1].X, written[1].Y));
        Assert.True(written[0].Bulge is > -1 and < 0);
    }

    [Theory]
    [InlineData(0, 0, 10, 0, 2)]
    [InlineData(7, -4, 19, 5, 1.5)]
    [InlineData(-3, 8, -15, 24, -4)]
    public void The_place_where_an_arc_is_split_lies_on_it_half_way(double x0, double y0, double x1, double y1, double bulge)
    {
        // The apex stands off the middle of the chord by bulge times half the chord, to the right of the way for a left turn.
        var written = Written(closed: false, new(x0, y0, bulge), new(x1, y1));
        Assert.Equal(((x0 + x1) / 2) + (bulge * (y1 - y0) / 2), written[1].X, 6);
        Assert.Equal(((y0 + y1) / 2) - (bulge * (x1 - x0) / 2), written[1].Y, 6);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(500, 900)]
    public void A_sagitta_of_half_a_thousandth_is_kept_wherever_the_piece_lies(double x, double y)
    {
        // A chord of 2 has a sagitta as great as the bulge.
        Assert.Equal(0.0005, Written(closed: false, new(x, y, 0.0005), new(x + 2, y))[0].Bulge, 6);
        Assert.Equal(0, Written(closed: false, new(x, y, 0.000499), new(x + 2, y))[0].Bulge);
        Assert.Equal(0, Written(closed: false, new(x, y, 0.000499), new(x, y + 2))[0].Bulge);
    }

    [Fact]
    public void A_half_turn_is_left_whole() => Assert.Equal(2, Written(closed: true, new(0, 0, 1), new(10, 0, 1)).Length);

    [Theory]
    [InlineData(0.00009, 0)]
    [InlineData(-0.00009, 0)]
    [InlineData(0.00011, 0.00011)]
    public void A_bulge_with_a_sagitta_below_half_a_thousandth_is_dropped(double bulge, double expected) =>
        Assert.Equal(expected, Written(closed: false, new(0, 0, bulge), new(10, 0))[0].Bulge, 6);

    [Fact]
    public void A_bulge_that_leads_nowhere_is_dropped() =>
        Assert.Equal(0, Written(closed: false, new(0, 0), new(10, 0, 1))[1].Bulge);

    [Fact]
    public void Repeated_places_are_dropped_and_the_arc_between_others_is_kept()
    {
        var written =
            Written(closed: true, new(0, 0), new(10, 0, 0.7), new(10, 0, 0.5), new(10, 10), new(0, 10), new(0, 1e-8, 0.3));
        Assert.Equal([new(10, 0, 0.5), new(10, 10), new(0, 10), new(0, 0)], Rotated(written));
    }

    [Fact]
    public void An_open_polyline_may_end_where_it_begins() =>
        Assert.Equal(4, Written(closed: false, new(0, 0), new(10, 0), new(10, 10), new(0, 0)).Length);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public void A_polyline_without_extent_is_refused(int count)
    {
        var exception =
            Drawings.Refused(new DxfPolyline([.. Enumerable.Repeat(new DxfVertex(1, 1, 0.5), count)], true) { Layer = "CUT" });
        Assert.Contains("fewer than two vertices", exception.Message, StringComparison.Ordinal);
        Assert.Contains("CUT", exception.Message, StringComparison.Ordinal);
    }

    private static DxfVertex[] Written(bool closed, params DxfVertex[] vertices) =>
        [.. Assert.IsType<DxfPolyline>(Assert.Single(
            DxfReader.Read(
                Drawings.Bytes(Drawings.Create(new DxfPolyline([.. vertices], closed)), DxfVersion.R2000)).Entities)).Vertices];

    private static DxfVertex[] Rotated(DxfVertex[] vertices) => vertices[0].X == 0 ? [.. vertices[1..], vertices[0]] : vertices;
}
