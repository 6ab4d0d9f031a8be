using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>Each change happens where half a gap or half a width is used up.</summary>
public class RegionChangesTests
{
    private static readonly Region TwoSquares = Shapes.Union(Shapes.Rectangle(10, 10), Shapes.RectangleAt(13.4, 0, 10, 10));

    [Fact]
    public void Islands_merge_at_half_their_gap()
    {
        var change = Assert.Single(Found(TwoSquares, 1));

        Assert.Equal(RegionChangeKind.IslandsMerge, change.Kind);
        Assert.Equal(1.7, change.At, 0.01);
        Assert.InRange(change.Place.X, 10, 13.4);
        Assert.InRange(change.Within, 0.001, 0.005);
    }

    [Fact]
    public void A_change_is_known_to_half_the_last_step()
    {
        // From 0 to 4 in halves of at most 1 mm: 1.7 lies between 1 and 2.
        var change = Assert.Single(Found(TwoSquares, 1, 1, 0, 4));

        Assert.Equal(1.5, change.At);
        Assert.Equal(0.5, change.Within);
    }

    [Fact]
    public void Between_two_steps_that_look_alike_nothing_is_searched()
    {
        var asked = new List<double>();
        RegionChanges.Find(
            d => { asked.Add(d); return new ArcOffsetter().Offset(TwoSquares, d, CornerJoin.Round); },
            [0, 1, 2, 3], true, 0.5, TestContext.Current.CancellationToken);

        Assert.Equal([0, 1, 1.5, 2, 3], asked.Order());
    }

    [Fact]
    public void Steps_may_fall()
    {
        // The other way along: the part shrinks as the parameter grows.
        var change = Assert.Single(RegionChanges.Find(
            d => new ArcOffsetter().Offset(TwoSquares, d, CornerJoin.Round), [3, 2, 1, 0], false, 0.01,
            TestContext.Current.CancellationToken));

        Assert.Equal(RegionChangeKind.NeckPinches, change.Kind);
        Assert.Equal(1.7, change.At, 0.01);
    }

    [Fact]
    public void A_neck_pinches_at_half_its_width()
    {
        var dumbbell =
            Shapes.Polygon((0, 0), (10, 0), (10, 4), (20, 4), (20, 0), (30, 0), (30, 10), (20, 10), (20, 6), (10, 6),
                (10, 10), (0, 10));

        AssertOne(RegionChangeKind.NeckPinches, 1, Found(dumbbell, -1), new(8, 3, 22, 7));
    }

    [Fact]
    public void An_island_vanishes_at_its_radius() =>
        AssertOne(RegionChangeKind.IslandVanishes, 1.5,
            Found(Shapes.Union(Shapes.Rectangle(10, 10), Shapes.DiscAt(20, 5, 1.5)), -1), new(19.9, 4.9, 20.1, 5.1));

    [Fact]
    public void A_hole_closes_at_its_radius() =>
        AssertOne(RegionChangeKind.HoleCloses, 1.5, Found(Plate(Loop.Circle(new(20, 5), 1.5)), 1), new(19.9, 4.9, 20.1, 5.1));

    [Fact]
    public void A_hole_splits_at_its_narrow_place() =>
        AssertOne(RegionChangeKind.HoleSplits, 1, Found(Plate(Loop.Polygon(
            new(5, 0), new(15, 0), new(15, 4), new(20, 4), new(20, 0), new(30, 0), new(30, 10), new(20, 10), new(20, 6),
            new(15, 6), new(15, 10), new(5, 10))), 1),
            new(13, 3, 22, 7));

    [Fact]
    public void Holes_merge_at_half_the_wall_between_them() =>
        AssertOne(RegionChangeKind.HolesMerge, 1.5,
            Found(Plate(Loop.Rectangle(new(5, 0, 15, 10)), Loop.Rectangle(new(18, 0, 28, 10))), -1), new(14, -2, 19, 12));

    [Fact]
    public void A_hole_opens_at_half_the_wall_round_it() =>
        AssertOne(RegionChangeKind.HoleOpens, 1, Found(Plate(Loop.Rectangle(new(5, -8, 15, 10))), -1), new(3, -10, 17, -6));

    [Fact]
    public void A_bay_closes_at_half_its_mouth()
    {
        var pot = Shapes.Polygon((0, 0), (30, 0), (30, 30), (16, 30), (16, 25), (25, 25), (25, 10), (5, 10), (5, 25), (14, 25),
            (14, 30), (0, 30));

        AssertOne(RegionChangeKind.BayCloses, 1, Found(pot, 1), new(5, 10, 25, 25));
    }

    [Fact]
    public void Three_islands_that_merge_at_once_are_two_changes() =>
        Assert.Equal(2,
            Found(Shapes.Union(Shapes.Rectangle(10, 10), Shapes.RectangleAt(13, 0, 10, 10), Shapes.RectangleAt(26, 0, 10, 10)),
                1).Count);

    [Fact]
    public void What_keeps_its_parts_has_no_changes() => Assert.Empty(Found(Plate(Loop.Rectangle(new(5, 0, 30, 10))), 1));

    [Fact]
    public void The_search_stops_when_asked() =>
        Assert.Throws<OperationCanceledException>(() => RegionChanges.Find(_ => TwoSquares, [0, 1], true, 0.01, new(true)));

    /// <summary>The changes while a region grows (1) or shrinks (-1).</summary>
    private static List<RegionChange> Found(Region region, int sign, double resolution = 0.01, params double[] steps) =>
        RegionChanges.Find(
        d => new ArcOffsetter().Offset(region, sign * d, CornerJoin.Round),
        steps.Length > 0 ? steps : [0, 0.8, 1.6, 2.4], sign > 0, resolution, TestContext.Current.CancellationToken);

    private static void AssertOne(RegionChangeKind kind, double at, List<RegionChange> found, Bounds where)
    {
        var change = Assert.Single(found);
        Assert.Equal(kind, change.Kind);
        Assert.Equal(at, change.At, 0.01);
        Assert.True(where.Contains(change.Place), change.Place.ToString());
    }

    /// <summary>A plate of 60 x 60 mm round (20, 20) with holes.</summary>
    private static Region Plate(params Loop[] holes) => Region.FromLoops([Loop.Rectangle(new(-10, -10, 50, 50)), .. holes]);
}
