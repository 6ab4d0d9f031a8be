using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Measuring;
using CsCheck;
using Xunit;
using static BuckGen.Tests.Intake.Measuring.Measured;

namespace BuckGen.Tests.Intake.Measuring;

/// <summary>What moving, turning, scaling or redrawing an outline does to its measures: nothing but what it must.</summary>
public class MeasureLaws
{
    private const int Enough = 60;

    [Fact]
    public void Turning_and_moving_keep_every_measure() =>
        Gen.Select(RandomRegion.Islands, Gen.Double[-3, 3], Gen.Double[-1000, 1000], Gen.Double[-1000, 1000])
            .Sample((region, angle, x, y) =>
        {
            var map = Affine.Rotation(angle, new(0, 0)).Then(Affine.Translation(new(x, y)));
            AssertSame(Measure(region), Measure(region.Transformed(map)), 1);
        }, iter: Enough);

    [Fact]
    public void Mirroring_keeps_every_measure() =>
        Gen.Select(RandomRegion.Islands, Gen.Double[-3, 3]).Sample((region, angle) =>
            AssertSame(Measure(region), Measure(region.Transformed(Affine.Reflection(new(5, 7), new Vec2(1, 0).Turned(angle)))),
                1), iter: Enough);

    [Fact]
    public void Scaling_scales_lengths_and_keeps_angles() =>
        Gen.Select(RandomRegion.Islands, Gen.Double[0.1, 10]).Sample((region, factor) =>
            AssertSame(Measure(region), Measure(region.Transformed(Affine.Scaling(factor, new(3, 4)))), factor), iter: Enough);

    [Fact]
    public void It_does_not_matter_where_and_which_way_a_loop_was_drawn() =>
        Gen.Select(RandomRegion.Islands, Gen.Int[1, 11], Gen.Bool).Sample((region, start, reverse) =>
        {
            var redrawn = Region.FromLoops(region.Loops.Reverse().Select(l => Redrawn(l, start, reverse)));

            var (one, other) = (Measure(region), Measure(redrawn));
            AssertSame(one, other, 1);
            Assert.Equal(0, one.NarrowestGap!.Middle.DistanceTo(other.NarrowestGap!.Middle), Near);
            Assert.Equal(0, one.SharpestCorner!.Place.DistanceTo(other.SharpestCorner!.Place), Near);
        }, iter: Enough);

    [Fact]
    public void Nor_do_more_joints_along_the_same_edge() =>
        Gen.Select(RandomRegion.Islands, Gen.Int[2, 5]).Sample((region, parts) =>
        {
            var divided = Region.FromLoops(region.Loops.Select(l => Loop.FromSegments(
                [.. l.Segments
                    .SelectMany(s => Enumerable.Range(0, parts).Select(i => s.Part((double)i / parts, (i + 1.0) / parts)))])));

            AssertSame(Measure(region), Measure(divided), 1);
        }, iter: Enough);

    [Fact]
    public void Most_random_outlines_have_every_measure()
    {
        var count = 0;
        RandomRegion.Islands.Sample(region =>
        {
            var measures = Measure(region);
            if (measures is { NarrowestNeck: not null, NarrowestGap: not null, SharpestCorner: not null })
                Interlocked.Increment(ref count);
        }, iter: Enough);

        Assert.InRange(count, Enough * 9 / 10, int.MaxValue);
    }

    private static Loop Redrawn(Loop loop, int start, bool reverse)
    {
        var first = start % loop.Segments.Length;
        ImmutableArray<Segment> turned = [.. loop.Segments[first..], .. loop.Segments[..first]];
        var redrawn = Loop.FromSegments(turned);
        return reverse ? redrawn.Reversed() : redrawn;
    }

    private static void AssertSame(OutlineMeasures one, OutlineMeasures other, double factor)
    {
        Equal(one.NarrowestNeck?.Width, other.NarrowestNeck?.Width);
        Equal(one.NarrowestGap?.Width, other.NarrowestGap?.Width);
        Equal(one.MinInsideRadius?.Radius, other.MinInsideRadius?.Radius);
        Equal(one.MinOutsideRadius?.Radius, other.MinOutsideRadius?.Radius);
        Assert.Equal(one.NarrowestGap?.Kind, other.NarrowestGap?.Kind);
        Assert.Equal(one.SharpestCorner?.IsInside, other.SharpestCorner?.IsInside);
        Assert.Equal(one.SharpestCorner?.Angle ?? 0, other.SharpestCorner?.Angle ?? 0, 1e-6);

        void Equal(double? a, double? b)
        {
            Assert.Equal(a is null, b is null);
            // Far from the origin and for flat arcs a radius loses digits: ten of them are left.
            if (a is { } x && b is { } y) Assert.Equal(x * factor, y, 1e-5 * Math.Max(1, factor));
        }
    }
}
