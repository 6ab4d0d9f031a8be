using BuckGen.Fuzz.Tests.Cases;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>Shapes with next to no width: needles, wedges, hair-fine rings, lenses.</summary>
internal static class Slivers
{
    public static IEnumerable<SketchLoop> Draw(RandomSource dice)
    {
        var fine = dice.Scaled(1e-5, 0.1);
        if (dice.Chance(0.6)) yield return SketchLoop.Rectangle(new(0, -0.5), 0.8, 0.3);
        yield return dice.Whole(0, 4) switch
        {
            0 => SketchLoop.Polygon(new(-0.5, 0), new(0.5, 0), new(dice.Between(-0.6, 0.6), fine)),
            1 => SketchLoop.Rectangle(default, 1, fine),
            2 => new([(new(-0.5, 0), fine), (new(0.5, 0), fine * dice.Any(1, 0, -0.5))]),
            3 => SketchLoop.Polygon(
                new(-0.5, 0), new(0.1, 0), new(0.1, 0.4), new(0.1 - fine, 0.4), new(0.1 - fine, fine), new(-0.5, 0.2)),
            _ => SketchLoop.Polygon(new(-0.5, 0), new(0, fine), new(0.5, 0), new(0, 0.4)),
        };
        if (dice.Chance(0.3))
        {
            yield return SketchLoop.Circle(new(0, 0.8), 0.3);
            yield return SketchLoop.Circle(new(0, 0.8), 0.3 - fine);
        }
    }
}
