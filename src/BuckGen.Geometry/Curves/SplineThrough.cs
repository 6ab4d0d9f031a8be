using System.Collections.Immutable;

namespace BuckGen.Geometry.Curves;

/// <summary>Smooth curves through given points.</summary>
internal static class SplineThrough
{
    // How far the ends of an open spline are felt fades by about four with every point.
    private const int Wrapped = 10;

    /// <summary>The natural cubic spline through points, parametrised by the distances between them.</summary>
    /// <param name="points">At least two points, no two in a row equal.</param>
    /// <param name="closed">True to run smoothly through the first point, which the last one repeats.</param>
    public static ImmutableArray<BezierCurve> Points(ImmutableArray<Vec2> points, bool closed)
    {
        if (!closed) return Open(points);
        var around = points.Length - 1;
        var wrapped = Enumerable.Range(-Wrapped, around + 1 + 2 * Wrapped).Select(i => points[(i + Wrapped * around) % around]);
        return [.. Open([.. wrapped]).Skip(Wrapped).Take(around)];
    }

    private static ImmutableArray<BezierCurve> Open(ImmutableArray<Vec2> points)
    {
        var lengths = points.Skip(1).Zip(points, (b, a) => a.DistanceTo(b)).ToArray();
        var slopes = Slopes(points, lengths);
        return [.. lengths.Select((h, i) => new BezierCurve(
            points[i], points[i] + slopes[i] * (h / 3), points[i + 1] - slopes[i + 1] * (h / 3), points[i + 1]))];
    }

    /// <summary>Slopes at the points that leave no jump in curvature, with none at the two ends.</summary>
    private static Vec2[] Slopes(ImmutableArray<Vec2> points, double[] lengths)
    {
        var last = points.Length - 1;
        var (upper, right) = (new double[points.Length], new Vec2[points.Length]);
        var chords = lengths.Select((h, i) => (points[i + 1] - points[i]) * (1 / h)).ToArray();
        (upper[0], right[0]) = (0.5, chords[0] * 1.5);
        for (var i = 1; i <= last; i++)
        {
            var (before, after) = i < last ? (lengths[i], lengths[i - 1]) : (1, 0);
            var diagonal = 2 * (before + after) - before * upper[i - 1];
            upper[i] = after / diagonal;
            var target = i < last ? chords[i - 1] * (3 * before) + chords[i] * (3 * after) : chords[^1] * 3;
            right[i] = (target - right[i - 1] * before) * (1 / diagonal);
        }

        for (var i = last - 1; i >= 0; i--) right[i] -= right[i + 1] * upper[i];
        return right;
    }
}
