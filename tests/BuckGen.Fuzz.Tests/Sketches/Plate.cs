using BuckGen.Fuzz.Tests.Cases;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>A plate with rows of holes, some with islands in them: the counters of a sign.</summary>
internal static class Plate
{
    public static IEnumerable<SketchLoop> Draw(RandomSource dice)
    {
        var (columns, rows) = (dice.Any(1, 2, 2, 4), dice.Whole(1, 2));
        var (width, height) = (1.0 / columns, 0.5 / rows);
        yield return Rounded(dice.Chance(0.5) ? dice.Between(0.01, 0.2) : 0);
        for (var i = 0; i < columns; i++)
            for (var j = 0; j < rows; j++)
            {
                var centre = new Vec2((i + 0.5) * width - 0.5, (j + 0.5) * height - 0.25);
                var (w, h) = (width * dice.Between(0.05, 0.97), height * dice.Between(0.05, 0.97));
                yield return dice.Chance(0.5) ? SketchLoop.Circle(centre, Math.Min(w, h) / 2)
                    : SketchLoop.Rectangle(centre, w, h);
                if (dice.Chance(0.2)) yield return SketchLoop.Circle(centre, Math.Min(w, h) * dice.Between(0.1, 0.45));
            }
    }

    private static SketchLoop Rounded(double radius)
    {
        var (x, y, quarter) = (0.5, 0.25, Math.Tan(Math.PI / 8));
        return radius == 0
            ? SketchLoop.Rectangle(default, 1, 0.5)
            : new(
            [
                (new(radius - x, -y), 0), (new(x - radius, -y), quarter), (new(x, radius - y), 0), (new(x, y - radius), quarter),
                (new(x - radius, y), 0), (new(radius - x, y), quarter), (new(-x, y - radius), 0), (new(-x, radius - y), quarter),
            ]);
    }
}
