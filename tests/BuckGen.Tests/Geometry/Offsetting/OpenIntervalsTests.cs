using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Tests.Geometry.Offsetting;

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
