using BuckGen.Fuzz.Tests.Cases;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>A coastline of up to 20,000 corners: what a traced picture looks like.</summary>
internal static class ManyCorners
{
    private const int MaxCorners = 20_000;

    public static IEnumerable<SketchLoop> Draw(RandomSource dice)
    {
        var (count, waves, rough) = ((int)dice.Scaled(300, dice.Chance(0.2) ? MaxCorners : 2000), dice.Whole(2, 60),
            dice.Any(0, 0.001, 0.2));
        var phase = dice.Between(0, 7);
        yield return SketchLoop.Polygon(Enumerable.Range(0, count).Select(i =>
        {
            var angle = 2 * Math.PI * i / count;
            // Rough by less than the way from corner to corner, so that the line does not cross itself.
            return SketchLoop.Towards(angle)
                * (0.4 + 0.1 * Math.Sin(waves * angle + phase) + rough * dice.Between(-1, 1) / count);
        }));
    }
}
