using BuckGen.Fuzz.Tests.Cases;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>
/// Spikes, gaps, doubled corners and slivers of 0.000001 to 0.001 mm strewn along loops, as careless programs leave them.
/// </summary>
internal static class Sprinkles
{
    public static SketchLoop On(SketchLoop loop, RandomSource dice)
    {
        var share = Math.Min(0.5, 4.0 / loop.Corners.Count);
        return new([.. loop.Corners.SelectMany(c => dice.Chance(share) ? Crumb(c, dice) : [c])]);
    }

    private static IEnumerable<(Vec2 Point, double Bulge)> Crumb((Vec2 Point, double Bulge) corner, RandomSource dice)
    {
        var (size, angle) = (dice.Scaled(1e-6, 1e-3), dice.Between(0, 7));
        var near = corner.Point + SketchLoop.Towards(angle) * size;
        return dice.Whole(0, 4) switch
        {
            0 => [(corner.Point, 0), (near, corner.Bulge)],
            1 => [(corner.Point, 0), (near, 0), corner],
            2 => [(corner.Point, 0), (near, 0), (corner.Point + SketchLoop.Towards(angle + 0.3) * size, corner.Bulge)],
            3 => [(corner.Point, 0), (near, 0.9), corner],
            _ => [(near, corner.Bulge)],
        };
    }
}
