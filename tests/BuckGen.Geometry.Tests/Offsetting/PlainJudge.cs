namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>
/// Judges an offset with round corners by its definition, with nothing but corners and bulges of the regions: arcs are cut into
/// chords here, a point's side is the sum of the angles under which it sees the chords, its distance that to the nearest chord.
/// </summary>
internal sealed class PlainJudge
{
    private const double ChordError = 1e-4;
    private readonly List<double[]> source;

    private PlainJudge(Region source) => this.source = [.. source.Loops.Select(Corners)];

    /// <summary>The judge of one region's offsets.</summary>
    public static PlainJudge Create(Region source) => new(source);

    /// <summary>The first point that the offset has on the wrong side; null when there is none.</summary>
    /// <param name="result">The offset.</param>
    /// <param name="distance">The distance, mm.</param>
    /// <param name="uncertain">Points this near to where the edge should be, mm, are not judged.</param>
    /// <param name="points">The points.</param>
    public string? Disagreement(Region result, double distance, double uncertain, IEnumerable<Vec2> points)
    {
        var edges = result.Loops.Select(Corners).ToList();
        foreach (var p in points)
        {
            var away = source.Min(l => Distance(l, p));
            // A loop holds what it winds round; a hole is a loop in an island, so every second loop takes away again.
            var inside = source.Count(l => Winding(l, p) != 0) % 2 != 0;
            var depth = (inside ? away : -away) + distance;
            if (Math.Abs(depth) > uncertain && edges.Count(l => Winding(l, p) != 0) % 2 != 0 != depth > 0)
                return FormattableString.Invariant(
                    $"({p.X:R}, {p.Y:R}) is {(depth > 0 ? "missing from" : "wrongly in")} the offset by {distance:R} mm, ")
                    + FormattableString.Invariant($"{depth:F4} mm deep");
        }

        return null;
    }

    private static double[] Corners(Loop loop)
    {
        var corners = new List<double>();
        foreach (var s in loop.Segments)
        {
            corners.AddRange([s.Start.X, s.Start.Y]);
            if (s.Bulge == 0) continue;
            var (dx, dy) = (s.End.X - s.Start.X, s.End.Y - s.Start.Y);
            var away = (1 / s.Bulge - s.Bulge) / 4;
            var (cx, cy) = ((s.Start.X + s.End.X) / 2 - dy * away, (s.Start.Y + s.End.Y) / 2 + dx * away);
            var radius = Math.Sqrt((s.Start.X - cx) * (s.Start.X - cx) + (s.Start.Y - cy) * (s.Start.Y - cy));
            var (from, sweep) = (Math.Atan2(s.Start.Y - cy, s.Start.X - cx), 4 * Math.Atan(s.Bulge));
            var steps = (int)Math.Clamp(Math.Ceiling(Math.Abs(sweep) / Math.Sqrt(8 * ChordError / radius)), 1, 2000);
            for (var k = 1; k < steps; k++)
                corners.AddRange(
                    [cx + radius * Math.Cos(from + sweep * k / steps), cy + radius * Math.Sin(from + sweep * k / steps)]);
        }

        return [.. corners];
    }

    private static double Distance(double[] loop, Vec2 p)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i < loop.Length; i += 2)
        {
            var (ax, ay, bx, by) = (loop[i], loop[i + 1], loop[(i + 2) % loop.Length], loop[(i + 3) % loop.Length]);
            var (dx, dy) = (bx - ax, by - ay);
            var length = dx * dx + dy * dy;
            var t = length == 0 ? 0 : Math.Clamp(((p.X - ax) * dx + (p.Y - ay) * dy) / length, 0, 1);
            var (ex, ey) = (ax + t * dx - p.X, ay + t * dy - p.Y);
            least = Math.Min(least, ex * ex + ey * ey);
        }

        return Math.Sqrt(least);
    }

    private static int Winding(double[] loop, Vec2 p)
    {
        var angle = 0.0;
        for (var i = 0; i < loop.Length; i += 2)
        {
            var (ax, ay) = (loop[i] - p.X, loop[i + 1] - p.Y);
            var (bx, by) = (loop[(i + 2) % loop.Length] - p.X, loop[(i + 3) % loop.Length] - p.Y);
            angle += Math.Atan2(ax * by - ay * bx, ax * bx + ay * by);
        }

        return (int)Math.Round(angle / (2 * Math.PI));
    }
}
