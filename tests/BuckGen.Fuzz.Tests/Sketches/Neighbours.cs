using BuckGen.Fuzz.Tests.Cases;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>Shapes beside each other that all but touch, touch, or overlap by next to nothing.</summary>
internal static class Neighbours
{
    public static IEnumerable<SketchLoop> Draw(RandomSource dice)
    {
        var (columns, rows, size) = (dice.Whole(1, 3), dice.Whole(1, 2), 0.3);
        var gap = dice.Chance(0.15) ? 0 : dice.Scaled(1e-7, 0.05) * (dice.Chance(0.15) ? -1 : 1);
        for (var i = 0; i < columns; i++)
            for (var j = 0; j < rows; j++)
            {
                var centre = new Vec2(i, j) * (size + gap);
                yield return dice.Whole(0, 3) switch
                {
                    0 => SketchLoop.Circle(centre, size / 2),
                    1 => SketchLoop.RegularPolygon(
                        centre, size / 2, dice.Whole(3, 8), dice.Any(0, Math.PI / 4, dice.Between(0, 7))),
                    _ => SketchLoop.Rectangle(centre, size, size),
                };
            }
    }
}
