using CsCheck;

namespace BuckGen.Geometry.Tests;

/// <summary>Random regions of lines and arcs that do not cross themselves.</summary>
internal static class RandomRegion
{
    /// <summary>
    /// A loop of 5 to 12 corners at even angles round the origin, 30 to 50 mm away. Each side keeps to its own sector: the
    /// least angle between a side and its sector's edge is 32° (trigonometry), an arc of bulge 0.1 leaves its chord by 11.5°.
    /// </summary>
    public static Gen<Region> Star { get; } = Gen.Int[5, 12].SelectMany(count =>
        Gen.Select(Gen.Double[30, 50].Array[count], Gen.Frequency((1, Gen.Const(0.0)), (1, Gen.Double[-0.1, 0.1])).Array[count],
            (radii, bulges) =>
            Region.FromLoops([Loop.FromCorners(
                [.. Enumerable.Range(0, count)
                    .Select(i => (new Vec2(radii[i], 0).Turned(2 * Math.PI * i / count), Flat(bulges[i])))])])));

    /// <summary>A star with a round hole of 4 to 12 mm radius round the origin, and perhaps a square island beside it.</summary>
    public static Gen<Region> Islands { get; } = Gen.Select(Star, Gen.Double[4, 12], Gen.Bool, (star, radius, island) =>
    {
        var loops = star.Loops.Append(Loop.Circle(new(0, 0), radius));
        return Region.FromLoops(island ? loops.Append(Loop.Rectangle(new(60, -10, 80, 10))) : loops);
    });

    // Between a line and a nearly straight arc lies nothing a drawing would hold.
    private static double Flat(double bulge) => Math.Abs(bulge) < 1e-4 ? 0 : bulge;
}
