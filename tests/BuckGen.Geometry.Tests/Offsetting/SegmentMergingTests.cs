using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class SegmentMergingTests
{
    [Fact]
    public void Two_lines_on_one_line_become_one() =>
        Assert.Equal([Line(0, 0, 10, 0), Line(10, 0, 10, 10), Line(10, 10, 0, 0)],
            SegmentMerging.Merge([Line(0, 0, 4, 0), Line(4, 0, 10, 0), Line(10, 0, 10, 10), Line(10, 10, 0, 0)]));

    [Fact]
    public void The_last_line_joins_the_first() =>
        Assert.Equal([Line(0, 0, 10, 0), Line(10, 0, 10, 10), Line(10, 10, 0, 0)],
            SegmentMerging.Merge([Line(4, 0, 10, 0), Line(10, 0, 10, 10), Line(10, 10, 0, 0), Line(0, 0, 4, 0)]));

    /// <summary>
    /// Found by a random design: the ends of the shortest arc were set on each other, and the next offset was not a number.
    /// </summary>
    [Fact]
    public void A_piece_of_which_nothing_is_left_is_left_out()
    {
        Segment[] closing = [Line(0, 0, 10, 0), Line(10, 0, 10, 10), Line(10, 10, 0, 5e-7), new(new(0, 5e-7), new(0, 3e-6), 0.1)];
        Segment[] within = [Line(0, 0, 10, 0), new(new(10, 2e-6), new(10, 0), 0.1), Line(10, 0, 10, 10), Line(10, 10, 0, 0)];

        Assert.Equal(3, SegmentMerging.Merge([.. closing]).Count);
        Assert.Equal([within[0], within[2], within[3]], SegmentMerging.Merge([.. within]));
    }

    [Fact]
    public void A_line_that_runs_back_stays() =>
        Assert.Equal(2, SegmentMerging.Merge([Line(0, 0, 10, 0), Line(10, 0, 4, 0)]).Count);

    [Theory]
    [InlineData(0.5e-6, 1)]
    [InlineData(2e-6, 2)]
    public void A_corner_shows_from_a_millionth_on(double height, int left) =>
        Assert.Equal(left, SegmentMerging.Merge([new(new(0, 0), new(5, height)), new(new(5, height), new(10, 0))]).Count);

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 2)]
    [InlineData(4, 2)]
    public void Quarters_of_a_circle_become_arcs_of_half_a_turn_at_most(int quarters, int left)
    {
        var merged = SegmentMerging.Merge([.. Quarters(10).Take(quarters)]);

        Assert.Equal(left, merged.Count);
        Assert.All(merged, a => Assert.Equal(10, a.Radius, 1e-9));
        Assert.All(merged, a => Assert.Equal(0, a.Centre.Length, 1e-9));
        Assert.Equal(quarters * 5 * Math.PI, merged.Sum(a => a.Length), 1e-9);
    }

    [Fact]
    public void Arcs_to_the_right_join_too()
    {
        var merged = SegmentMerging.Merge([.. Quarters(10).Take(2).Reverse().Select(a => a.Reversed())]);

        Assert.Equal(-1, Assert.Single(merged).Bulge, 1e-9);
    }

    [Fact]
    public void Arcs_of_other_circles_stay()
    {
        var quarter = Quarters(10).First();
        // A smaller circle that runs on smoothly, the same radius after a corner, and a turn to the other side.
        Assert.Equal(2, SegmentMerging.Merge([quarter, Segment.Arc(new(0, 10), new(-5, 5), Math.PI / 2)]).Count);
        Assert.Equal(2, SegmentMerging.Merge([quarter, Segment.Arc(new(0, 10), new(10, 0), Math.PI / 2)]).Count);
        Assert.Equal(2, SegmentMerging.Merge([quarter, Segment.Arc(new(0, 10), new(-10, 20), -Math.PI / 2)]).Count);
    }

    [Fact]
    public void A_line_and_an_arc_stay() =>
        Assert.Equal(2, SegmentMerging.Merge([Line(10, -5, 10, 0), Quarters(10).First()]).Count);

    [Fact]
    public void Each_piece_starts_where_the_one_before_ends()
    {
        var merged = SegmentMerging.Merge([Line(0, 0, 10, 0), new(new(10.000004, 0), new(10, 10))]);

        Assert.Equal(new(10, 0), merged[1].Start);
    }

    private static Segment Line(double x0, double y0, double x1, double y1) => new(new(x0, y0), new(x1, y1));

    private static IEnumerable<Segment> Quarters(double r) =>
        new Vec2[] { new(r, 0), new(0, r), new(-r, 0), new(0, -r) }.Select(p => Segment.Arc(p, p.Left, Math.PI / 2));
}
