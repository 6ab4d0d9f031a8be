using BuckGen.Fuzz.Tests.Cases;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>
/// A star about 1 across with lines and arcs as sides, perhaps with a hole; each side keeps to its own sector mostly.
/// </summary>
internal static class Star
{
    public static IEnumerable<SketchLoop> Draw(RandomSource dice)
    {
        var (count, inner) = (dice.Any(3, 4, 5, 6, 8, 12, 18), dice.Between(0.1, 0.5));
        var arcs = dice.Chance(0.5) ? dice.Between(0, 0.4) : 0;
        yield return new([.. Enumerable.Range(0, count).Select(i =>
            (SketchLoop.Towards(2 * Math.PI * i / count) * dice.Between(inner, 0.5), arcs == 0
                || dice.Chance(0.3) ? 0 : dice.Between(-arcs, arcs)))]);
        if (dice.Chance(0.3)) yield return SketchLoop.Circle(default, inner * dice.Between(0.1, 0.7), dice.Whole(2, 4));
    }
}
