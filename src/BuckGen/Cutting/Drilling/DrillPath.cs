using System.Collections.Immutable;
using BuckGen.Cutting.Drilling.Paths;
using BuckGen.Geometry;

namespace BuckGen.Cutting.Drilling;

/// <summary>The order of visiting holes: a nearly shortest way from the origin through all of them, ending anywhere.</summary>
internal static class DrillPath
{
    /// <summary>
    /// Finds a short way by nearest neighbour, then 2-opt and Or-opt moves, then small disturbances that are kept where they pay.
    /// No random numbers and no clock: the same points give the same way, whatever order they come in. Only points at exactly the
    /// same place may change places with each other.
    /// </summary>
    /// <param name="points">The points to visit, mm.</param>
    /// <returns>Indices into <paramref name="points"/>, each once, in the order of visiting.</returns>
    /// <exception cref="ArgumentException">A coordinate is not an ordinary number.</exception>
    public static ImmutableArray<int> Order(IReadOnlyList<Vec2> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Any(p => !p.IsFinite)) throw new ArgumentException("Every point needs finite coordinates.", nameof(points));
        // A fixed order of the points to begin with is what makes the way independent of the order they come in.
        var sorted = Enumerable.Range(0, points.Count).OrderBy(i => points[i].X).ThenBy(i => points[i].Y).ToArray();
        Vec2[] places = [default, .. sorted.Select(i => points[i])];
        return [.. ShortPath.Through(places).Skip(1).Select(place => sorted[place - 1])];
    }

    /// <summary>Length of the way from the origin through the points in the order given, mm.</summary>
    /// <param name="ordered">Points in the order of visiting.</param>
    public static double Length(IEnumerable<Vec2> ordered)
    {
        ArgumentNullException.ThrowIfNull(ordered);
        var (length, here) = (0.0, default(Vec2));
        foreach (var next in ordered)
        {
            length += here.DistanceTo(next);
            here = next;
        }

        return length;
    }
}
