using BuckGen.Cutting.Drilling;
using BuckGen.Geometry;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Cutting.Drilling;

[Trait("Tier", "slow")]
public class PathTests(ITestOutputHelper log)
{
    private static readonly Gen<Vec2> Coarse = Gen.Int[-5, 5].Select(Gen.Int[-5, 5], (x, y) => new Vec2(x, y));

    [Fact]
    public void Every_point_is_visited_once() =>
        Coarse.Array[0, 60].Sample(points => Assert.Equal(Enumerable.Range(0, points.Length), DrillPath.Order(points).Order()));

    [Fact]
    public void The_order_in_which_points_come_does_not_matter() =>
        Gen.Select(Coarse.Array[0, 60], Gen.Int[1, 1000]).Sample((points, seed) =>
        {
            var shuffled = points.ToArray();
            new Random(seed).Shuffle(shuffled);
            Assert.Equal(Visited(points), Visited(shuffled));
        });

    [Fact]
    public void A_row_is_drilled_from_its_near_end()
    {
        Vec2[] row = [new(30, 5), new(10, 5), new(40, 5), new(20, 5)];
        Assert.Equal([1, 3, 0, 2], DrillPath.Order(row));
        Assert.Equal(Math.Sqrt(125) + 30, DrillPath.Length(Visited(row)), 9);
    }

    [Fact]
    public void No_points_need_no_way()
    {
        Assert.Empty(DrillPath.Order([]));
        Assert.Equal(0, DrillPath.Length([]));
    }

    [Fact]
    public void A_point_that_is_nowhere_is_refused() =>
        Assert.Throws<ArgumentException>(() => DrillPath.Order([new(1, double.NaN)]));

    [Fact]
    public void Twelve_points_are_visited_by_the_shortest_way_or_nearly_so() =>
        Judge(12, 25, 1.01, ShortestPath.Length);

    [Theory]
    [InlineData(50)]
    [InlineData(100)]
    [InlineData(150)]
    [InlineData(200)]
    public void The_way_is_within_10_percent_of_what_no_way_can_beat(int count) => Judge(count, 3, 1.10, PathBound.Compute);

    [Fact]
    public void The_bound_is_below_the_shortest_way_and_near_it()
    {
        foreach (var seed in Enumerable.Range(1, 10))
        {
            var points = PointSets.Make("anywhere", 12, seed);
            Assert.InRange(PathBound.Compute(points) / ShortestPath.Length(points), 0.95, 1 + 1e-9);
        }
    }

    [Fact]
    public void Of_two_thousand_points_each_is_visited_once() =>
        Assert.Equal(Enumerable.Range(0, 2000), DrillPath.Order(PointSets.Make("anywhere", 2000, 1)).Order());

    private static Vec2[] Visited(Vec2[] points) => [.. DrillPath.Order(points).Select(i => points[i])];

    private void Judge(int count, int seeds, double limit, Func<Vec2[], double> reference)
    {
        foreach (var kind in PointSets.Kinds)
        {
            var ratios = Enumerable.Range(1, seeds).Select(seed =>
            {
                var points = PointSets.Make(kind, count, seed * 1000 + count);
                return DrillPath.Length(Visited(points)) / reference(points);
            }).ToArray();
            log.WriteLine($"{count} points, {kind}: mean {ratios.Average():F4}, worst {ratios.Max():F4}");
            Assert.InRange(ratios.Min(), 1 - 1e-9, limit);
            Assert.InRange(ratios.Max(), 1 - 1e-9, limit);
        }
    }
}
