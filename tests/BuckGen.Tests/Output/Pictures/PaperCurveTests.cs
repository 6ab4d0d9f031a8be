using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;
using Xunit;

namespace BuckGen.Tests.Output.Pictures;

/// <summary>A picture leaves out only what can't be seen.</summary>
public class PaperCurveTests
{
    public static TheoryData<int, double, bool> Curves => new()
    {
        { 5000, 0, true }, { 5000, 0.002, true }, { 400, 0.05, false }, { 3000, 0.3, true }, { 9, 0, true },
    };

    [Theory]
    [MemberData(nameof(Curves))]
    public void What_is_shown_lies_within_a_hundredth_of_a_millimetre(int count, double jitter, bool closed)
    {
        var random = new Random(7);
        Vec2[] points = [.. Enumerable.Range(0, count).Select(i =>
            new Vec2(40 + 5 * Math.Sin(11.0 * i / count) + jitter * random.NextDouble(), 0).Turned(2 * Math.PI * i / count))];
        ImmutableArray<Segment> segments =
            [.. Enumerable.Range(0, closed ? count : count - 1).Select(i => new Segment(points[i], points[(i + 1) % count]))];

        var shown = PaperCurve.Shown(new(segments, closed)).Segments;

        Assert.All(points, p => Assert.InRange(shown.Min(s => s.DistanceTo(p)), 0, PaperCurve.MaxDeviation));
        // Every corner shown is one of the path's own, and each piece starts where the one before ends.
        Assert.Subset(points.ToHashSet(), shown.SelectMany(s => new[] { s.Start, s.End }).ToHashSet());
        Assert.All(shown.Zip(shown.Skip(1)), pair => Assert.Equal(pair.First.End, pair.Second.Start));
        Assert.Equal((segments[0].Start, segments[^1].End), (shown[0].Start, shown[^1].End));
        if (count == 5000) Assert.InRange(shown.Length, 10, 1500);
    }

    [Fact]
    public void A_needle_keeps_its_tip()
    {
        ImmutableArray<Segment> path =
        [
            .. Enumerable.Range(0, 20).Select(i => new Segment(new(i, 0), new(i + 1, 0))),
            .. Enumerable.Range(0, 15).Select(i => new Segment(new(20 - i, 0), new(19 - i, 0))),
        ];

        Assert.Contains(new(20, 0), PaperCurve.Shown(new(path, false)).Segments.Select(s => s.End));
    }

    [Fact]
    public void An_arc_that_can_be_seen_stays_an_arc()
    {
        ImmutableArray<Segment> path =
            [.. Enumerable.Range(0, 10).Select(i => new Segment(new(i, 0), new(i + 1, 0), i == 5 ? 0.5 : 0))];

        Assert.Equal([0, 0.5, 0], PaperCurve.Shown(new(path, false)).Segments.Select(s => s.Bulge));
    }

    [Fact]
    public void Arcs_too_flat_to_see_go_into_a_straight_line()
    {
        ImmutableArray<Segment> path =
            [.. Enumerable.Range(0, 10).Select(i => new Segment(new(i, 0), new(i + 1, 0), i % 2 == 0 ? 1e-6 : 0))];

        Assert.Equal([new(new(0, 0), new(10, 0))], PaperCurve.Shown(new(path, false)).Segments);
    }
}
