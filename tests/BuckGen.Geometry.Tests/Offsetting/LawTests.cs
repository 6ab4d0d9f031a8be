using BuckGen.Geometry.Offsetting;
using CsCheck;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>What holds for the offset of any region.</summary>
public class LawTests
{
    private static readonly ArcOffsetter Exact = new();
    private static readonly PolygonOffsetter Polygon = new(0.01);

    private static readonly Gen<double> Outward = Gen.Double[0.1, 15];

    // Every star keeps a disc of 30·cos(36°) - 30·sin(36°)/10 = 22 mm round its middle, so nothing here shrinks to nothing.
    private static readonly Gen<double> Inward = Gen.Double[-8, -0.1];

    private static readonly Gen<double> Either = Gen.OneOf(Outward, Inward);

    [Fact]
    public void The_edge_lies_at_the_distance_and_the_inside_is_inside() =>
        Gen.Select(RandomRegion.Islands, Either).Sample((region, d) =>
        {
            var result = Exact.Offset(region, d, CornerJoin.Round);

            Assert.False(result.IsEmpty && d > 0);
            Assert.InRange(DistanceOracle.WorstEdge(region, result, d), 0, 1e-5);
            Assert.Null(DistanceOracle.Disagreement(region, result, d, 1e-4, across: 30));
        }, iter: 300);

    [Fact]
    public void Growing_never_loses_area_and_shrinking_never_gains() =>
        Gen.Select(RandomRegion.Islands, Either, Gen.Enum<Corners>()).Sample((region, d, corners) =>
        {
            var result = Exact.Offset(region, d, new(corners));

            Assert.True(d > 0 ? result.Area > region.Area : result.Area < region.Area);
            Assert.False(d > 0 && result.IsEmpty);
        }, iter: 300);

    [Fact]
    public void Farther_offsets_contain_nearer_ones() =>
        Gen.Select(RandomRegion.Islands, Gen.Double[-6, 10], Gen.Double[0.5, 5]).Sample((region, near, more) =>
        {
            var (small, large) = (Exact.Offset(region, near, CornerJoin.Round),
                Exact.Offset(region, near + more, CornerJoin.Round));

            AssertContains(large, small);
        }, iter: 300);

    [Fact]
    public void An_offset_outward_contains_its_region_and_an_inward_one_lies_in_it() =>
        Gen.Select(RandomRegion.Islands, Outward, Inward).Sample((region, outward, inward) =>
        {
            AssertContains(Exact.Offset(region, outward, CornerJoin.Round), region);
            AssertContains(region, Exact.Offset(region, inward, CornerJoin.Round));
        }, iter: 200);

    [Fact]
    public void Out_and_back_in_contains_the_region() =>
        Gen.Select(RandomRegion.Star, Gen.Double[0.5, 10]).Sample((region, d) =>
        {
            var there = Exact.Offset(region, d, CornerJoin.Round);
            var back = Exact.Offset(there, -d, CornerJoin.Round);

            Assert.True(back.Area > region.Area - 1e-3);
            // Outer corners come back exactly; only bays are filled.
            Assert.All(region.Segments, s => Assert.True(
                back.Contains(s.PointAt(0.5)) || back.DistanceToEdge(s.PointAt(0.5)) < 1e-4));
        }, iter: 200);

    [Fact]
    public void Two_steps_outward_are_one_long_step() =>
        Gen.Select(RandomRegion.Star, Gen.Double[0.5, 5], Gen.Double[0.5, 5]).Sample((region, a, b) =>
        {
            var twice = Exact.Offset(Exact.Offset(region, a, CornerJoin.Round), b, CornerJoin.Round);

            Assert.Equal(Exact.Offset(region, a + b, CornerJoin.Round).Area, twice.Area, 1e-3);
        }, iter: 200);

    [Fact]
    public void Which_way_a_loop_is_drawn_changes_nothing() =>
        Gen.Select(RandomRegion.Islands, Either).Sample((region, d) =>
        {
            var backwards = Region.FromLoops(region.Loops.Select(l => l.Reversed()));

            AssertSame(Exact.Offset(region, d, CornerJoin.Round), Exact.Offset(backwards, d, CornerJoin.Round), 1e-6);
        }, iter: 100);

    [Fact]
    public void At_which_corner_a_loop_begins_changes_nothing() =>
        Gen.Select(RandomRegion.Star, Either, Gen.Int[1, 4]).Sample((region, d, shift) =>
        {
            var segments = region.OnlyLoop().Segments;
            var begun = Region.FromLoops([Loop.FromSegments([.. segments.Skip(shift), .. segments.Take(shift)])]);

            AssertSame(Exact.Offset(region, d, CornerJoin.Round), Exact.Offset(begun, d, CornerJoin.Round), 1e-6);
        }, iter: 100);

    [Fact]
    public void Moving_and_turning_the_region_moves_and_turns_the_offset() =>
        Gen.Select(RandomRegion.Islands, Either, Gen.Double[-3, 3], Gen.Double[-1000, 1000], Gen.Enum<Corners>())
            .Sample((region, d, angle, shift, corners) =>
        {
            var map = Affine.Rotation(angle, new(3, 4)).Then(Affine.Translation(new(shift, -shift / 2)));

            AssertSame(
                Exact.Offset(region, d, new(corners)).Transformed(map),
                Exact.Offset(region.Transformed(map), d, new(corners)), 1e-5);
        }, iter: 200);

    [Fact]
    public void Mirroring_the_region_mirrors_the_offset() =>
        Gen.Select(RandomRegion.Islands, Either).Sample((region, d) =>
        {
            var map = Affine.Reflection(new(1, 2), new(3, 1));

            AssertSame(Exact.Offset(region, d, CornerJoin.Round).Transformed(map),
                Exact.Offset(region.Transformed(map), d, CornerJoin.Round), 1e-5);
        }, iter: 100);

    [Fact]
    public void Scaling_the_region_and_the_distance_scales_the_offset() =>
        Gen.Select(RandomRegion.Star, Either, Gen.Double[0.3, 8]).Sample((region, d, factor) =>
        {
            var map = Affine.Scaling(factor, new(0, 0));

            AssertSame(
                Exact.Offset(region, d, CornerJoin.Round).Transformed(map),
                Exact.Offset(region.Transformed(map), d * factor, CornerJoin.Round), 1e-4);
        }, iter: 100);

    [Fact]
    public void Mitred_corners_reach_at_least_as_far_as_round_ones() =>
        Gen.Select(RandomRegion.Islands, Outward).Sample((region, d) =>
        {
            var (round, mitred) = (Exact.Offset(region, d, CornerJoin.Round), Exact.Offset(region, d, CornerJoin.Mitre));

            Assert.True(mitred.Area >= round.Area - 1e-6);
            AssertContains(mitred, round);
            // And no farther than the limit.
            Assert.All(mitred.Segments, s => Assert.InRange(region.DistanceToEdge(s.Start), 0, 5 * d + 1e-6));
        }, iter: 200);

    [Fact]
    public void The_polygon_rung_agrees_with_the_exact_one() =>
        Gen.Select(RandomRegion.Islands, Either, Gen.Enum<Corners>()).Sample((region, d, corners) =>
        {
            var (exact, polygon) = (Exact.Offset(region, d, new(corners)), Polygon.Offset(region, d, new(corners)));

            Assert.InRange(Math.Abs(exact.Area - polygon.Area), 0, 0.01 * (exact.Perimeter + region.Perimeter));
            Assert.Equal(exact.Islands.Length, polygon.Islands.Length);
            Assert.Null(OffsetCheck.Fault(region, exact, d, new(corners), 0.01));
            // Its own rounding of arcs adds a little to the chord error it was given.
            Assert.Null(OffsetCheck.Fault(region, polygon, d, new(corners), 0.015));
        }, iter: 150);

    [Fact]
    public void Offsets_have_no_more_pieces_than_the_outline_and_its_corners() =>
        Gen.Select(RandomRegion.Star, Outward).Sample((region, d) =>
            Exact.Offset(region, d, CornerJoin.Round).Segments.Count() <= 2 * region.Segments.Count(), iter: 200);

    private static void AssertContains(Region large, Region small)
    {
        Assert.False(large.IsEmpty);
        foreach (var segment in small.Segments)
            for (var i = 0; i < 4; i++)
                if (segment.PointAt(i / 4.0) is var p && !large.Contains(p)) Assert.InRange(large.DistanceToEdge(p), 0, 1e-5);
    }

    private static void AssertSame(Region expected, Region actual, double tolerance)
    {
        Assert.Equal(expected.Islands.Length, actual.Islands.Length);
        Assert.Equal(expected.HoleCount, actual.HoleCount);
        Assert.Equal(expected.Area, actual.Area, tolerance * Math.Max(1, expected.Perimeter));
        foreach (var segment in actual.Segments) Assert.InRange(expected.DistanceToEdge(segment.PointAt(0.5)), 0, tolerance);
    }
}
