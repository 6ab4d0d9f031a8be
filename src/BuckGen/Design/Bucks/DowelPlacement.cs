using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Design.Bucks;

/// <summary>Chooses where dowels go through an island.</summary>
/// <remarks>
/// Three holes whose distances all differ fit onto themselves in one way only: a layer turned round or flipped over
/// does not go onto its dowels. Two holes are second best, since they also fit turned by half a turn.
/// </remarks>
internal static class DowelPlacement
{
    /// <summary>
    /// Minimum difference, mm, between the sides of the triangle, so that a wrong fit is felt (common practice, no source).
    /// </summary>
    public const double Distinct = 3;

    private const int Candidates = 240;

    /// <summary>Up to three places, as far apart as the allowed region lets them be.</summary>
    /// <param name="allowed">Where the centre of a hole may lie.</param>
    /// <param name="minDistance">Minimum distance between two centres, mm.</param>
    public static ImmutableArray<Vec2> Choose(Region allowed, double minDistance)
    {
        var candidates = Sample(allowed);
        var pair = FarthestPair(candidates);
        if (pair is not { } ends || ends.A.DistanceTo(ends.B) < minDistance) return [];
        var third = candidates
            .Where(c => IsDistinct(ends.A, ends.B, c) && Math.Min(c.DistanceTo(ends.A), c.DistanceTo(ends.B)) >= minDistance)
            .Select(c => (Place: (Vec2?)c, Area: Key(Math.Abs((ends.B - ends.A).Cross(c - ends.A)))))
            .DefaultIfEmpty()
            .MaxBy(c => c.Area);
        return third.Place is { } place ? [ends.A, ends.B, place] : [ends.A, ends.B];
    }

    private static bool IsDistinct(Vec2 a, Vec2 b, Vec2 c)
    {
        var (ab, bc, ca) = (a.DistanceTo(b), b.DistanceTo(c), c.DistanceTo(a));
        var height = Math.Abs((b - a).Cross(c - a)) / ab;
        return height >= Distinct && Math.Abs(ab - bc) >= Distinct && Math.Abs(bc - ca) >= Distinct
            && Math.Abs(ca - ab) >= Distinct;
    }

    /// <summary>Points along the edge of the allowed region: the farthest places always lie there.</summary>
    private static List<Vec2> Sample(Region allowed)
    {
        var points = new List<Vec2>();
        var step = allowed.Perimeter / Candidates;
        foreach (var segment in allowed.Segments)
        {
            var count = Math.Max(1, (int)Math.Ceiling(segment.Length / step));
            for (var i = 0; i < count; i++) points.Add(segment.PointAt((double)i / count));
        }

        // The lowest, then the leftmost first: of equals the first is chosen.
        var few = points.Count <= 4 * Candidates ? points : points.Where((_, i) => i % (points.Count / (2 * Candidates)) == 0);
        return [.. few.OrderBy(p => Key(p.Y)).ThenBy(p => Key(p.X))];
    }

    private static (Vec2 A, Vec2 B)? FarthestPair(List<Vec2> points)
    {
        (Vec2 A, Vec2 B)? best = null;
        var longest = 0.0;
        for (var i = 0; i < points.Count; i++)
            for (var j = i + 1; j < points.Count; j++)
            {
                // Rounded only when it may be the longest: there are half a million pairs.
                var exact = (points[i] - points[j]).LengthSquared;
                if (exact > longest && Key(exact) is var squared && squared > longest)
                    (best, longest) = ((points[i], points[j]), squared);
            }
        return best;
    }

    /// <summary>
    /// A number to compare by: rounded, so that the last bit of a double, which differs between machines, decides nothing.
    /// </summary>
    private static double Key(double value) => Math.Round(value, 5);
}
