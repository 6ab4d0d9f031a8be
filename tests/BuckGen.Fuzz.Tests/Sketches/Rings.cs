using BuckGen.Fuzz.Tests.Cases;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>Loops inside each other, round a common middle or off it: islands in holes in islands.</summary>
internal static class Rings
{
    public static IEnumerable<SketchLoop> Draw(RandomSource dice)
    {
        var (radius, middle) = (0.5, default(Vec2));
        for (var left = dice.Any(1, 2, 2, 3, 5); left > 0; left--)
        {
            // A polygon reaches in to the cosine of half its sector.
            var corners = dice.Any(0, 0, 3, 4, 6, 9);
            yield return corners == 0
                ? SketchLoop.Circle(middle, radius, dice.Whole(2, 5))
                : SketchLoop.RegularPolygon(middle, radius, corners, dice.Between(0, 7));
            var room = radius * (corners == 0 ? 1 : Math.Cos(Math.PI / corners));
            radius = room * (dice.Chance(0.2) ? 1 - dice.Scaled(1e-5, 0.05) : dice.Between(0.3, 0.95));
            middle += SketchLoop.Towards(dice.Between(0, 7)) * ((room - radius) * dice.Any(0, 0.5, 0.98));
        }
    }
}
