using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>The zones where no point of an offset can lie, and what they cut from a moved piece.</summary>
public class ForbiddenZoneTests
{
    private static readonly NearSegment Line = new(new(new(new(0, 0), new(10, 0))), 2);

    // The upper half of a circle of 5 mm round the origin, counter-clockwise.
    private static readonly NearSegment Arc = new(new(new(new(5, 0), new(-5, 0), 1)), 2);

    private static readonly InsideMitre Wedge = new([new(0, 0), new(4, 0), new(4, 3), new(0, 3)]);

    [Theory]
    [InlineData(5, 1.999, true)]
    [InlineData(5, -1.999, true)]
    [InlineData(5, 2, false)]
    [InlineData(5, 1.9999999995, false)]
    [InlineData(5, 1.999999998, true)]
    [InlineData(-1.9, 0, true)]
    [InlineData(11.9, 0, true)]
    [InlineData(-2.1, 0, false)]
    [InlineData(11.5, 1.5, false)]
    [InlineData(11.3, 1.3, true)]
    public void Near_a_line_is_what_a_disc_that_runs_along_it_covers(double x, double y, bool inside) =>
        Assert.Equal(inside, Line.Contains(new(x, y)));

    [Theory]
    [InlineData(0, 6.9, true)]
    [InlineData(0, 7.1, false)]
    [InlineData(0, 3.1, true)]
    [InlineData(0, 2.9, false)]
    [InlineData(0, 0, false)]
    [InlineData(5, -1.9, true)]
    [InlineData(5, -2.1, false)]
    [InlineData(0, -5, false)]
    public void Near_an_arc_is_what_a_disc_that_runs_along_it_covers(double x, double y, bool inside) =>
        Assert.Equal(inside, Arc.Contains(new(x, y)));

    [Theory]
    [InlineData(2, 1, true)]
    [InlineData(2, 0, false)]
    [InlineData(2, 5e-10, false)]
    [InlineData(2, 2e-9, true)]
    [InlineData(3.999, 2.999, true)]
    [InlineData(4.001, 2, false)]
    [InlineData(2, -1, false)]
    [InlineData(-0.1, 2, false)]
    [InlineData(2, 3.1, false)]
    public void A_wedge_holds_what_lies_left_of_all_its_sides(double x, double y, bool inside) =>
        Assert.Equal(inside, Wedge.Contains(new(x, y)));

    [Fact]
    public void Bounds_reach_as_far_as_the_zone()
    {
        Assert.Equal(new(-2, -2, 12, 2), Line.Bounds);
        Assert.Equal(7, Arc.Bounds.MaxY, 1e-12);
        Assert.Equal(-2, Arc.Bounds.MinY, 1e-12);
        Assert.Equal(new(0, 0, 4, 3), Wedge.Bounds);
        Assert.True(Line.IsConvex && Wedge.IsConvex && !Arc.IsConvex);
    }

    [Fact]
    public void A_piece_that_crosses_a_line_s_zone_loses_its_middle()
    {
        // Upright at x = 5 from -10 to 10: the zone takes -2 to 2, that is 0.4 to 0.6 of it.
        AssertOpen([(0, 0.4), (0.6, 1)], new(new(5, -10), new(5, 10)), Line);
        // At x = 11.2 the disc round the end takes ±1.6: Pythagoras.
        AssertOpen([(0, 0.42), (0.58, 1)], new(new(11.2, -10), new(11.2, 10)), Line);
        AssertOpen([(0, 1)], new(new(12.5, -10), new(12.5, 10)), Line);
        AssertOpen([], new(new(5, -1), new(5, 1)), Line);
        // Parallel at the distance: touched all along, not taken.
        AssertOpen([(0, 1)], new(new(0, 2), new(10, 2)), Line);
        AssertOpen([], new(new(0, 1.9), new(10, 1.9)), Line);
    }

    [Fact]
    public void A_piece_that_crosses_an_arc_s_zone_loses_what_lies_in_the_band()
    {
        // Upright at x = 0 from -10 to 10: from 3 to 7, that is 0.65 to 0.85 of it.
        AssertOpen([(0, 0.65), (0.85, 1)], new(new(0, -10), new(0, 10)), Arc);
        // Level at y = 0 through both ends: 3 to 7 on either side.
        AssertOpen([(0, 0.15), (0.35, 0.65), (0.85, 1)], new(new(-10, 0), new(10, 0)), Arc);
    }

    [Fact]
    public void An_arc_that_crosses_a_zone_loses_its_share_of_the_angle()
    {
        // A half circle of 4 mm round the origin, upper side: Line's band reaches to y = 2, which is 30° of 180° from either end.
        AssertOpen([(1 / 6.0, 1)], new(new(4, 0), new(-4, 0), 1), new NearSegment(new(new(new(0, 0), new(20, 0))), 2));
        // A wedge takes what lies between its sides: y from 0 to 3 for x from 0 to 4 leaves asin(3/4) to the end.
        AssertOpen([(Math.Asin(0.75) / Math.PI, 1)], new(new(4, -1e-6), new(-4, 0), 1),
            new InsideMitre([new(0, -1), new(5, -1), new(5, 3), new(0, 3)]), 1e-5);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e-10)]
    [InlineData(-1e-10)]
    public void An_arc_that_only_touches_the_edge_of_a_zone_is_cut_there(double shift)
    {
        // From the band beside the line, over the tangent at the top of the disc round its end, and on beyond that end. A hair
        // lower the circle misses the band's edge; taken as a whole it would be judged by its middle.
        var (start, end) = (new Vec2(10 - Math.Sqrt(2), Math.Sqrt(2) - shift), new Vec2(12, -shift));

        AssertOpen([(1 / 3.0, 1)], Segment.Arc(start, end, -0.75 * Math.PI),
            new NearSegment(new(new(new(0, 0), new(10, 0))), 2), 1e-4);
    }

    private static void AssertOpen((double From, double To)[] expected, Segment piece, ForbiddenZone zone,
        double precision = 1e-9)
    {
        var open = new OpenIntervals();
        open.Reset();
        open.Remove(new Carrier(piece), zone);

        Assert.Equal(expected.Length, open.Intervals.Count);
        Assert.Equal(expected.Length == 0, open.IsEmpty);
        for (var i = 0; i < expected.Length; i++)
        {
            Assert.Equal(expected[i].From, open.Intervals[i].From, precision);
            Assert.Equal(expected[i].To, open.Intervals[i].To, precision);
        }
    }
}
