using BuckGen.Fuzz.Tests.Cases;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>A bar with fingers: necks and slots of many widths, as in blocky letters.</summary>
internal static class Comb
{
    public static IEnumerable<SketchLoop> Draw(RandomSource dice)
    {
        var corners = new List<Vec2> { new(0, 0) };
        var x = 0.0;
        for (var left = dice.Any(1, 2, 3, 7); left > 0; left--)
        {
            var (finger, slot) = (dice.Scaled(0.004, 0.2), dice.Scaled(0.0005, 0.2));
            var (top, floor, lean) = (dice.Between(0.2, 0.6), dice.Between(0.02, 0.18),
                dice.Any(0, 0, dice.Between(-0.3, 0.3)) * finger);
            corners.AddRange([new(x + finger + slot, 0)]);
            corners.InsertRange(0,
                [new(x + finger + slot, floor), new(x + finger, floor), new(x + finger + Math.Min(lean, slot * 0.4), top),
                    new(x, top)]);
            x += finger + slot;
        }

        yield return SketchLoop.Polygon(corners.Distinct());
    }
}
