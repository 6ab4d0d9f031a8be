using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

public class ClosenessTests
{
    private static readonly Loop Left = Loop.Rectangle(new(0, 0, 10, 10)), Middle = Loop.Rectangle(new(14, 0, 24, 10)),
        Right = Loop.Rectangle(new(30, 0, 40, 10));

    [Fact]
    public void Loops_meet_one_after_the_other_the_nearest_first()
    {
        // The middle one meets the left one first, 4 mm off, whatever the order.
        foreach (Loop[] row in new Loop[][] { [Left, Middle, Right], [Left, Right, Middle] })
            Assert.Equal([14, 30], Closeness.Joints(row).Select(j => j.X));
    }

    [Fact]
    public void One_loop_meets_none() => Assert.Empty(Closeness.Joints([Left]));

    [Theory]
    [InlineData(0)]
    [InlineData(2.5)]
    [InlineData(5)]
    [InlineData(7.5)]
    public void The_nearest_place_may_lie_within_a_side(double y)
    {
        var tip = Loop.Polygon(new(12, y), new(20, y - 1), new(20, y + 1));

        Assert.Equal(new(10, y), Closeness.Place(Left, [tip]));
    }

    [Fact]
    public void Of_many_others_the_nearest_counts()
    {
        Assert.Equal(14, Closeness.Place(Middle, [Right, Left]).X);
        Assert.Equal(24, Closeness.Place(Middle, [Right]).X);
    }

    /// <summary>
    /// Found by an attack: 2,000 islands that grow together took minutes, since each step compared every loop with all that
    /// had met.
    /// </summary>
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 0)]
    [InlineData(3, 2)]
    public void Loops_meet_where_comparing_each_with_all_that_have_met_says(int seed, double jitter)
    {
        var random = new Random(seed);
        // On a bare grid all gaps are alike, so that the order of equals matters too.
        var loops = Enumerable.Range(0, 49)
            .Select(i =>
                Loop.Circle(new Vec2(i % 7 * 20, i / 7 * 20) + new Vec2(random.NextDouble(), random.NextDouble()) * jitter, 6))
                    .ToArray();
        loops = [.. loops.OrderBy(_ => random.Next())];

        Assert.Equal(Plainly([.. loops]), Closeness.Joints(loops));
    }

    private static IEnumerable<Vec2> Plainly(List<Loop> apart)
    {
        var met = new List<Loop> { apart[0] };
        apart.RemoveAt(0);
        while (apart.Count > 0)
        {
            var (loop, place, _) = apart
                .SelectMany(l => Samples(l)
                    .Select(p => (Loop: l, Place: p, Distance: met.SelectMany(m => m.Segments).Min(s => s.DistanceTo(p)))))
                    .MinBy(c => c.Distance);
            yield return place;
            apart.Remove(loop);
            met.Add(loop);
        }
    }

    private static IEnumerable<Vec2> Samples(Loop loop) =>
        loop.Segments.SelectMany(s => (Vec2[])[s.PointAt(0), s.PointAt(0.25), s.PointAt(0.5), s.PointAt(0.75)]);
}
