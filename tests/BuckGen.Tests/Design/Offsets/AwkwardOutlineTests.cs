using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Geometry.Tests.Offsetting;
using Xunit;

namespace BuckGen.Tests.Design.Offsets;

/// <summary>The rows of <see cref="AwkwardOutline"/> against the definition of an offset and against the polygon rung.</summary>
[Trait("Tier", "slow")]
public class AwkwardOutlineTests
{
    private static readonly TidiedOffsetter Polygon = new(new PolygonOffsetter(0.01));

    public static TheoryData<string, double> Rows
    {
        get
        {
            var rows = new TheoryData<string, double>();
            foreach (var outline in AwkwardOutline.All)
                foreach (var distance in outline.Distances) rows.Add(outline.Name, distance);
            return rows;
        }
    }

    [Fact]
    public void Every_row_has_a_name_of_its_own_a_reason_and_a_distance()
    {
        Assert.Equal(AwkwardOutline.All.Count, AwkwardOutline.All.Select(o => o.Name).Distinct().Count());
        Assert.All(AwkwardOutline.All,
            o => Assert.True(o.Why.Length > 10 && o.Distances.Length > 0 && !o.Region.IsEmpty, o.Name));
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_exact_offset_is_what_the_definition_says(string name, double distance)
    {
        var (region, exact) = (Named(name).Region, Named(name).Exact);

        var result = exact.Offset(region, distance, CornerJoin.Round);

        Assert.Null(DistanceOracle.Disagreement(region, result, distance, 1e-4));
        Assert.InRange(DistanceOracle.WorstEdge(region, result, distance), 0, 1e-5);
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_exact_offset_has_the_area_of_the_polygon_offset(string name, double distance)
    {
        var outline = Named(name);
        foreach (var join in (CornerJoin[])[CornerJoin.Round, CornerJoin.Mitre])
        {
            var (exact, polygon) = (outline.Exact.Offset(outline.Region, distance, join),
                Polygon.Offset(outline.Region, distance, join));

            // A mitre 5 times the distance long swings sideways by the first chord of a flattened arc, up to 0.05 rad.
            var swing = join.Corners == Corners.Mitre ? outline.SharpCorners * Math.Pow(5 * distance, 2) * 0.05 : 0;
            Assert.InRange(Math.Abs(exact.Area - polygon.Area), 0, 0.01 * (outline.Region.Perimeter + exact.Perimeter) + swing);
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Mitred_corners_contain_round_ones(string name, double distance)
    {
        var (region, exact) = (Named(name).Region, Named(name).Exact);

        var (round, mitred) = (exact.Offset(region, distance, CornerJoin.Round),
            exact.Offset(region, distance, CornerJoin.Mitre));

        // Shrinking has its open corners in bays and holes: there the mitre takes more away.
        var (large, small) = distance > 0 ? (mitred, round) : (round, mitred);
        // Mitres leave out tiny pieces, round corners follow them.
        var slack = region.Loops.Any(l => TinyPieces.Remove(l) != l) ? 2 * TinyPieces.MaxSize : 1e-5;
        Assert.True(large.Area >= small.Area - slack * region.Perimeter);
        Assert.All(small.Segments, s =>
        {
            var p = s.PointAt(0.5);
            Assert.True(large.Contains(p) || large.DistanceToEdge(p) < slack, $"{p} is outside");
        });
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_ladder_takes_the_exact_rung(string name, double distance)
    {
        var (region, exact) = (Named(name).Region, Named(name).Exact);
        foreach (var join in (CornerJoin[])[CornerJoin.Round, CornerJoin.Mitre])
        {
            var ladder = CheckedOffsetter.Standard(Tolerance.Default).Offset(region, distance, join);

            Assert.Equal(exact.Offset(region, distance, join).Segments, ladder.Segments);
        }
    }

    [Theory]
    [InlineData("half the width of a rectangle", -30)]
    [InlineData("half the width of a slot", -10)]
    [InlineData("radius of a disc", -20)]
    [InlineData("half the width of a ring", -10)]
    public void What_shrinks_to_a_line_or_a_point_is_gone(string name, double distance) =>
        Assert.True(Named(name).Exact.Offset(Named(name).Region, distance, CornerJoin.Round).IsEmpty);

    [Theory]
    [InlineData("circle of eight arcs", 5, 25)]
    [InlineData("circle of eight arcs", -5, 15)]
    [InlineData("hole closed exactly", 10, 40)]
    public void What_is_round_comes_out_as_one_circle(string name, double distance, double radius)
    {
        var circle = Named(name).Exact.Offset(Named(name).Region, distance, CornerJoin.Round).OnlyLoop().AsCircle(1e-6);

        Assert.Equal(radius, circle!.Value.Radius, 1e-6);
    }

    [Fact]
    public void Vertices_along_a_side_are_not_carried_on() =>
        Assert.Equal(8, new ArcOffsetter().Offset(Named("collinear vertices").Region, 3, CornerJoin.Round)
            .OnlyLoop().Segments.Length);

    [Fact]
    public void A_spike_too_small_to_see_throws_no_mitre()
    {
        // A rectangle mitred by 3 mm is a rectangle; a horn over the spike would add up to 5 · 3 · 3 mm².
        var grown = new ArcOffsetter().Offset(Named("spike out and straight back").Region, 3, CornerJoin.Mitre);

        Assert.Equal(56 * 36, grown.Area, 1e-2);
    }

    private static AwkwardOutline Named(string name) => AwkwardOutline.All.Single(o => o.Name == name);
}
