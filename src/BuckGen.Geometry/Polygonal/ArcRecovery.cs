namespace BuckGen.Geometry.Polygonal;

/// <summary>Finds the arcs in a closed polygon that was made by cutting arcs into chords.</summary>
internal static class ArcRecovery
{
    private const int MinPoints = 4;
    private const double SharpestTurn = 0.5;
    private const int MaxFailures = 8;

    /// <summary>The polygon as a loop in which each run of corners on one circle has become an arc.</summary>
    /// <param name="points">The corners, the first not repeated.</param>
    /// <param name="tolerance">Maximum distance of a corner, or of the middle of a side, from its arc, mm.</param>
    public static Loop Recover(IReadOnlyList<Vec2> points, double tolerance)
    {
        var corners = new List<(Vec2 Point, double Bulge)>();
        for (var i = 0; i < points.Count;)
        {
            var (last, arc) = LongestArc(points, i, tolerance);
            corners.Add((points[i], arc?.Bulge ?? 0));
            i = arc is null ? i + 1 : last;
        }

        return Loop.FromCorners(corners);
    }

    private static (int Last, Segment? Arc) LongestArc(IReadOnlyList<Vec2> points, int first, double tolerance)
    {
        (int Last, Segment? Arc) best = (first + 1, null);
        // A few points in a row may say nothing of the arc, as when a short side lies between two long ones.
        for (var last = first + MinPoints - 1; last <= points.Count && last - best.Last <= MaxFailures; last++)
        {
            if (Through(points[first], points[(first + last) / 2], points[last % points.Count]) is { } arc
                && Math.Abs(arc.Bulge) <= 1 && Fits(points, first, last, arc, tolerance)) best = (last, arc);
        }

        return best;
    }

    private static Segment? Through(Vec2 a, Vec2 b, Vec2 c)
    {
        var half = (b - a).AngleTo(c - b) / 2;
        return Math.Abs(half) < 1e-9 || !double.IsFinite(half) ? null : new Segment(a, c, Math.Tan(half));
    }

    private static bool Fits(IReadOnlyList<Vec2> points, int first, int last, Segment arc, double tolerance)
    {
        for (var i = first; i < last; i++)
        {
            var (p, next) = (points[i], points[(i + 1) % points.Count]);
            if (arc.DistanceTo(p) > tolerance || arc.DistanceTo(p.MidpointTo(next)) > tolerance) return false;
            if (i > first && Math.Abs((p - points[i - 1]).AngleTo(next - p)) > SharpestTurn) return false;
        }

        return true;
    }
}
