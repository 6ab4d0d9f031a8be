using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Design.Offsets;

/// <summary>Wrong offsets, each of which keeps all laws but one.</summary>
public class OffsetCheckTests
{
    private static readonly Region Source = Shapes.Rectangle(100, 60);

    /// <summary>Wood between circles of 30 and 10 mm.</summary>
    private static readonly Region Ring = Shapes.Ring(30, 10);

    [Fact]
    public void A_true_offset_passes() => Assert.Null(Fault(Source, Exact(Source, 3), 3));

    [Fact]
    public void A_mitred_corner_is_too_far_away_for_round_corners()
    {
        var mitred = Exact(Source, 3, Corners.Mitre);

        Assert.Null(Fault(Source, mitred, 3, Corners.Mitre));
        Assert.Contains("from the outline", Fault(Source, mitred, 3));
    }

    [Theory]
    [InlineData(2.98, "2.9800 mm from the outline")]
    [InlineData(3.02, "3.0200 mm from the outline")]
    [InlineData(2.991, null)]
    [InlineData(3.009, null)]
    public void A_wrong_distance_is_reported_with_its_place(double really, string? complaint)
    {
        var fault = Fault(Source, Exact(Source, really), 3);

        if (complaint is null) Assert.Null(fault);
        else Assert.Contains(complaint, fault);
    }

    [Fact]
    public void A_side_that_bends_away_between_good_corners_is_found()
    {
        // The corners of a rectangle 3 mm outside the round one lie on the arcs; the middle of one side is pulled in by 0.5 mm.
        var bent = Region
            .FromLoops([
                Loop.FromCorners(
                    [.. Exact(Source, 3)
                        .OnlyLoop().Segments.Select((s, i) => (s.Start, s.IsArc ? s.Bulge : i < 2 ? -0.01 : 0))])]);

        Assert.Contains("from the outline", Fault(Source, bent, 3));
    }

    [Fact]
    public void Growing_may_not_lose_area_nor_shrinking_gain_it()
    {
        Assert.Equal("growing lost area", Fault(Source, Shapes.Rectangle(90, 60), 3));
        Assert.Equal("shrinking gained area", Fault(Source, Shapes.Rectangle(110, 60), -3));
        Assert.Equal("growing lost area", Fault(Source, Region.Empty, 3));
    }

    [Theory]
    // Of one loop the area is known, of several to their length times half the tolerance: 80 mm by 0.005 mm are 0.4 mm².
    [InlineData(1, 0.01, true)]
    [InlineData(2, 0.35, false)]
    [InlineData(2, 0.45, true)]
    public void Where_loops_may_touch_their_area_is_known_to_the_tolerance(int loops, double lost, bool told)
    {
        var source = Shapes.Union([.. Enumerable.Range(0, loops).Select(i => Shapes.RectangleAt(20 * i, 0, 10, 10))]);
        // One square is wider or narrower than it was.
        Region Changed(double area) =>
            Shapes.Union(
                [Shapes.Rectangle(10 + area / 10, 10), .. Enumerable.Range(1, loops - 1)
                    .Select(i => Shapes.RectangleAt(20 * i, 0, 10, 10))]);

        Assert.Equal(told, Fault(source, Changed(-lost), 0.001) == "growing lost area");
        Assert.Equal(told, Fault(source, Changed(lost), -0.001) == "shrinking gained area");
    }

    [Fact]
    public void A_whole_island_may_not_go_missing()
    {
        var two = Shapes.Union(Source, Shapes.RectangleAt(200, 0, 10, 10));

        // 100 mm² of the small square are lost, but growing the large one gained more: only the places can tell.
        Assert.Equal("the island at (200.000, 0.000) is lost", Fault(two, Exact(Source, 3), 3));
    }

    [Theory]
    [InlineData(Corners.Round)]
    [InlineData(Corners.Mitre)]
    public void Phantom_wood_in_the_air_is_found(Corners corners)
    {
        // A disc of 7 mm keeps the distance of 3 mm from the hole's edge as well, but on the side of the air.
        var phantom = Shapes.Union(Exact(Ring, -3), Shapes.Disc(7));

        Assert.Null(Fault(Ring, Exact(Ring, -3), -3, corners));
        Assert.Matches(@"^the edge at \(.*\) lies in the air$", Fault(Ring, phantom, -3, corners)!);
    }

    [Fact]
    public void A_phantom_hole_in_the_wood_is_found()
    {
        var plate = Shapes.Rectangle(100, 100);
        // A square hole 3 mm inside the edge of a plate that grew by 3 mm keeps the distance.
        var hole = Loop.Rectangle(new(3, 3, 97, 97)).Reversed();

        Assert.Equal("growing lost area", Fault(plate, Region.FromLoops([.. Exact(plate, 3).Loops, hole]), 3));
        Assert.Equal("the edge at (50.000, 97.000) lies in the material",
            new SideLaw(new(plate.Segments), new(plate), 3, null, 0.01).Fault(hole)!
                .Replace("(3.000, 50.000)", "(50.000, 97.000)", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Corners.Round)]
    [InlineData(Corners.Mitre)]
    public void An_edge_the_wrong_way_round_is_found(Corners corners) =>
        // The right circle, 3 mm from the hole, but with the wood inside it.
        Assert.Matches("has its material on the wrong side$", Fault(Ring, Shapes.Disc(13), -3, corners)!);

    [Theory]
    [InlineData(Corners.Round)]
    [InlineData(Corners.Mitre)]
    public void A_filled_hole_is_found(Corners corners)
    {
        var square = Shapes.Counter(60, 60, 20, 20);
        var filled = Region.FromLoops([Exact(square, 3, corners).Islands[0].Outer]);

        Assert.Null(Fault(square, Exact(square, 3, corners), 3, corners));
        Assert.Contains("no edge runs through", Fault(square, filled, 3, corners));
    }

    [Theory]
    [InlineData(Corners.Round)]
    [InlineData(Corners.Mitre)]
    public void A_lost_island_of_shrunk_wood_is_found(Corners corners)
    {
        var two = Shapes.Union(Source, Shapes.RectangleAt(200, 0, 20, 20));

        Assert.Null(Fault(two, Exact(two, -3, corners), -3, corners));
        Assert.Contains("no edge runs through", Fault(two, Exact(Source, -3, corners), -3, corners));
    }

    [Fact]
    public void A_hole_that_only_corners_bound_is_missed()
    {
        // Four squares on their tips round a middle: grown by 9 mm they close, and the hole between them is made of arcs round
        // the tips.
        var tips = Shapes
            .Union([.. Enumerable.Range(0, 4)
                .Select(i => Shapes.Polygon((10, 0), (25, -15), (40, 0), (25, 15))
                    .Transformed(Affine.Rotation(i * Math.PI / 2, new(0, 0))))]);
        var grown = Exact(tips, 9);

        Assert.Equal(1, grown.HoleCount);
        Assert.Contains("no edge runs through", Fault(tips, Region.FromLoops([grown.Islands[0].Outer]), 9));
    }

    [Fact]
    public void An_edge_lost_near_the_end_of_a_long_side_is_missed()
    {
        // A wedge 100 mm long: what is left of it 5 mm inside lies at its thick end, away from the middles of its sides.
        var wedge = Shapes.Polygon((0, 0), (100, -10), (100, 10));

        Assert.False(Exact(wedge, -5).IsEmpty);
        Assert.Contains("no edge runs through", Fault(wedge, Region.Empty, -5));
    }

    [Theory]
    [InlineData(-18)]
    [InlineData(-22)]
    public void The_phantom_between_six_petals_is_found(double height)
    {
        var petals = OutlineReader.Read(Corpus.File("svg/h_petals_stop_short.svg").Content, "petals.svg").Region;
        var distance = height * Math.Tan(15.58 * Math.PI / 180);
        var right = CheckedOffsetter.Standard(Tolerance.Default).Offset(petals, distance, CornerJoin.Round);
        // Air farther from every tip than the distance: a hole in the petals grown, taken for wood.
        var air = new ArcOffsetter(MovedSides.Both).Offset(petals, -distance, CornerJoin.Round).Islands[0].Holes;

        Assert.Equal(6, right.Islands.Length);
        Assert.Single(air);
        Assert.Contains("lies in the air", Fault(petals, Region.FromLoops([.. right.Loops, .. air]), distance));
    }

    private static Region Exact(Region region, double distance, Corners corners = Corners.Round) =>
        new ArcOffsetter().Offset(region, distance, new(corners));

    private static string? Fault(Region source, Region result, double distance, Corners corners = Corners.Round) =>
        OffsetCheck.Fault(source, result, distance, new(corners), 0.01);
}
