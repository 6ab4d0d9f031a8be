using BuckGen.Geometry;

namespace BuckGen.Tests.Cutting.Drilling;

/// <summary>The exact shortest way from the origin through a few points, ending anywhere.</summary>
internal static class ShortestPath
{
    /// <summary>Its length, by the dynamic programme of Held and Karp (1962); time and room grow as 2^n.</summary>
    public static double Length(Vec2[] points)
    {
        var count = points.Length;
        var best = new double[1 << count, count];
        for (var visited = 1; visited < 1 << count; visited++)
        {
            for (var last = 0; last < count; last++)
            {
                var before = visited & ~(1 << last);
                best[visited, last] = before == visited ? double.PositiveInfinity
                    : before == 0 ? points[last].Length
                    : Enumerable.Range(0, count).Where(i => (before >> i & 1) == 1)
                        .Min(i => best[before, i] + points[i].DistanceTo(points[last]));
            }
        }

        return Enumerable.Range(0, count).Min(last => best[(1 << count) - 1, last]);
    }
}
