using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class OpenIntervalsTests
{
    [Fact]
    public void A_piece_starts_whole_and_starts_whole_again()
    {
        var open = new OpenIntervals();
        Assert.True(open.IsEmpty);

        open.Reset();
        Assert.Equal([(0, 1)], open.Intervals);

        open.Remove(0.0, 1.0);
        Assert.True(open.IsEmpty);
        open.Reset();
        Assert.Equal([(0, 1)], open.Intervals);
    }

    [Fact]
    public void A_chord_between_the_ends_of_a_bent_zone_stays_in_its_middle()
    {
        // Within 3 mm of a half circle of 10 mm lie both ends of its chord, but not the middle.
        var left = Left(new(new(10, 0), new(-10, 0), 1), new(new(-10, 0), new(10, 0)));

        Assert.Equal(0.15, left.From, 0.01);
        Assert.Equal(0.85, left.To, 0.01);
    }

    [Theory]
    // From one end of the zone to the other, over 20 mm and over 2.6 mm above its chord: 1.9 radians.
    [InlineData(4, 0, 1)]
    [InlineData(0.5142, 0.1, 0.9)]
    [InlineData(0.43, 0.1, 0.9)]
    public void An_arc_that_leaves_a_straight_zone_between_its_ends_stays_there(double bulge, double from, double to)
    {
        // Within 3 mm of a line of 10 mm; the arc stands over it.
        var left = Left(new(new(0, 0), new(10, 0)), new(new(10, 1), new(0, 1), bulge));

        Assert.InRange(left.From, from, 0.5);
        Assert.InRange(left.To, 0.5, to);
    }

    [Fact]
    public void A_piece_within_a_straight_zone_goes_whole()
    {
        foreach (var bulge in (double[])[0, 0.2, -0.2])
        {
            var open = new OpenIntervals();
            open.Reset();
            open.Remove(new(new(new(9, 1), new(1, 1), bulge)), new NearSegment(new(new(new(0, 0), new(10, 0))), 3));
            Assert.True(open.IsEmpty);
        }
    }

    private static (double From, double To) Left(Segment zone, Segment piece)
    {
        var open = new OpenIntervals();
        open.Reset();
        open.Remove(new(piece), new NearSegment(new(zone), 3));
        return Assert.Single(open.Intervals);
    }

    [Fact]
    public void What_is_taken_leaves_the_rest()
    {
        var open = new OpenIntervals();
        open.Reset();

        open.Remove(0.4, 0.6);
        Assert.Equal([(0, 0.4), (0.6, 1)], open.Intervals);
        // Across both, within one, beside them, and what is gone already.
        open.Remove(0.3, 0.7);
        Assert.Equal([(0, 0.3), (0.7, 1)], open.Intervals);
        open.Remove(0.8, 0.9);
        Assert.Equal([(0, 0.3), (0.7, 0.8), (0.9, 1)], open.Intervals);
        open.Remove(0.4, 0.6);
        Assert.Equal([(0, 0.3), (0.7, 0.8), (0.9, 1)], open.Intervals);
        open.Remove(0.0, 0.75);
        Assert.Equal([(0.75, 0.8), (0.9, 1)], open.Intervals);
        open.Remove(0.8, 1.0);
        Assert.Equal([(0.75, 0.8)], open.Intervals);
    }
}
