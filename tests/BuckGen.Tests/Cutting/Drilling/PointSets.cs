using BuckGen.Geometry;

namespace BuckGen.Tests.Cutting.Drilling;

/// <summary>Points as vents lie: anywhere, in rings, on a grid, in clumps. The same seed gives the same points.</summary>
internal static class PointSets
{
    public static IReadOnlyList<string> Kinds { get; } = ["anywhere", "rings", "grid", "clumps"];

    public static Vec2[] Make(string kind, int count, int seed)
    {
        var random = new Random(seed);
        return kind switch
        {
            "anywhere" => [.. Enumerable.Range(0, count).Select(_ => In(random, 300, 200))],
            "rings" => [.. Enumerable.Range(0, count).Select(i => OnRing(i % 3, i * Math.Tau / count))],
            "grid" => [.. Enumerable.Range(0, count).Select(i => new Vec2(i % 12 * 15, i / 12 * 15) + In(random, 0.5, 0.5))],
            "clumps" => Clumps(random, count),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
        };
    }

    private static Vec2[] Clumps(Random random, int count)
    {
        Vec2[] middles = [.. Enumerable.Range(0, 6).Select(_ => In(random, 300, 200))];
        return [.. Enumerable.Range(0, count).Select(i => middles[i % middles.Length] + In(random, 25, 25))];
    }

    private static Vec2 OnRing(int ring, double angle) => new Vec2(150, 110) + new Vec2(40 + 30 * ring, 0).Turned(angle);

    private static Vec2 In(Random random, double width, double height) =>
        new(random.NextDouble() * width, random.NextDouble() * height);
}
