using Xunit;

namespace BuckGen.Geometry.Tests;

public class BoxTreeTests
{
    /// <summary>Numbers of boxes round the sizes at which a level is full.</summary>
    public static TheoryData<int> Counts => [0, 1, 2, 3, 4, 5, 15, 16, 17, 63, 64, 65, 257, 1000];

    [Theory]
    [MemberData(nameof(Counts))]
    public void It_finds_what_a_look_at_each_box_finds(int count)
    {
        var random = new Random(count);
        foreach (var boxes in (Bounds[][])[Scattered(count, random), AlongALine(count)])
        {
            var (tree, found) = (new BoxTree(boxes), 0);
            foreach (var area in Scattered(50, random).Append(new(-1, -1, 2000, 200)))
            {
                int[] expected = [.. Enumerable.Range(0, count).Where(i => boxes[i].Intersects(area))];

                Assert.Equal(expected, tree.Query(area).Order());
                found += expected.Length;
            }

            Assert.True(found >= count);
        }
    }

    [Fact]
    public void Boxes_in_a_row_are_found_in_their_order()
    {
        var boxes = AlongALine(100);

        Assert.Equal(Enumerable.Range(10, 20), new BoxTree(boxes).Query(new(10.5, 0, 29.5, 1)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(1000)]
    public void Boxes_in_one_place_are_all_found(int count) =>
        Assert.Equal(count, new BoxTree([.. Enumerable.Repeat(new Bounds(3, 3, 3, 3), count)]).Query(new(0, 0, 4, 4)).Count());

    [Fact]
    public void Scattered_boxes_are_visited_by_a_small_share()
    {
        var tree = new BoxTree(Scattered(10_000, new(1)));
        var (walk, steps) = (new BoxTree.Walk(tree), 0);
        for (; !walk.IsDone; steps++)
            if (walk.Box.Intersects(new(50, 50, 51, 51)) && !walk.IsItem) walk.Enter();
            else walk.Pass();

        // Without an order of their own nearly every box would be round the middle: some 13,000 steps.
        Assert.InRange(steps, 10, 1_500);
    }

    private static Bounds[] Scattered(int count, Random random) => [.. Enumerable.Range(0, count).Select(_ =>
        Bounds.FromCorners(default, new(random.NextDouble() * 3, random.NextDouble() * 3)) is var size
        && new Vec2(random.NextDouble() * 100, random.NextDouble() * 100) is var corner
            ? new Bounds(corner.X, corner.Y, corner.X + size.MaxX, corner.Y + size.MaxY) : default)];

    private static Bounds[] AlongALine(int count) =>
        [.. Enumerable.Range(0, count).Select(i => new Bounds(i + 0.1, 0, i + 0.9, 1))];
}
