using BuckGen.Fuzz.Tests.Cases;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>Petals round empty air, each of whose paths stops a little short of its start.</summary>
internal static class Petals
{
    public static IEnumerable<SketchLoop> Draw(RandomSource dice)
    {
        var (count, inner) = (dice.Whole(3, 9), dice.Between(0.05, 0.3));
        var shortBy = dice.Chance(0.2) ? 0 : dice.Scaled(1e-6, 1e-3);
        // Without it petals overlap at their roots, or touch along a line.
        var half = dice.Any(0.6, 0.95, 1, 1.1) * Math.PI / count;
        var bulge = dice.Any(0, 0.2, -0.1);
        for (var i = 0; i < count; i++)
        {
            var (a, b) = (2 * Math.PI * i / count - half, 2 * Math.PI * i / count + half);
            var (start, tip) = (SketchLoop.Towards(a) * inner, SketchLoop.Towards((a + b) / 2) * 0.5);
            (Vec2, double)[] path = [(start, 0), (tip, bulge), (SketchLoop.Towards(b) * inner, bulge)];
            yield return new(shortBy == 0 ? path : [.. path, (start + SketchLoop.Towards(b) * shortBy, 0)]);
        }
    }
}
