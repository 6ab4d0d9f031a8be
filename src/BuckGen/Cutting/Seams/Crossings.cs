using BuckGen.Geometry;

namespace BuckGen.Cutting.Seams;

/// <summary>The outer edge of a plate cut where an upright line crosses it.</summary>
internal static class Crossings
{
    /// <summary>A line this near to a corner or a touching arc is no clean cut, mm.</summary>
    private const double Touching = 1e-6;

    /// <summary>The chains of edge on either side of the line; null when it misses the edge or only touches it.</summary>
    /// <param name="outer">The edge, counter-clockwise.</param>
    /// <param name="at">Where the line stands, x.</param>
    public static List<EdgeChain>? Cut(Loop outer, double at)
    {
        if (at <= outer.Bounds.MinX || at >= outer.Bounds.MaxX) return null;
        var parts = outer.Segments.SelectMany(s => Cut(s, at)).ToList();
        if (parts.Exists(p => Math.Abs(p.PointAt(0.5).X - at) < Touching)) return null;
        bool IsLeft(Segment s) => s.PointAt(0.5).X < at;
        var first = Enumerable.Range(0, parts.Count)
            .FirstOrDefault(i => IsLeft(parts[i]) != IsLeft(parts[(i + parts.Count - 1) % parts.Count]), -1);
        if (first < 0) return null;
        var chains = new List<EdgeChain>();
        foreach (var part in parts.Skip(first).Concat(parts.Take(first)))
        {
            if (chains.Count == 0 || chains[^1].IsLeft != IsLeft(part)) chains.Add(new(IsLeft(part), []));
            chains[^1].Segments.Add(part);
        }

        // Between two chains the edge must be on the line, or it jumps there.
        return chains.TrueForAll(c => Math.Abs(c.Segments[0].Start.X - at) < Touching) ? chains : null;
    }

    private static IEnumerable<Segment> Cut(Segment segment, double at)
    {
        var bounds = segment.Bounds;
        if (bounds.MinX >= at || bounds.MaxX <= at) return [segment];
        var points = new Vec2[2];
        var line = new Segment(new(at, bounds.MinY - 1), new(at, bounds.MaxY + 1));
        var found = SegmentIntersection.Find(segment, line, 0, points);
        double[] cuts =
        [
            0, .. points.Take(found).Select(segment.ParameterOf).Where(t => t is > 1e-9 and < 1 - 1e-9).Distinct().Order(), 1,
        ];
        return cuts.Skip(1).Select((to, i) => OnLine(segment.Part(cuts[i], to), cuts[i] > 0, to < 1, at));
    }

    /// <summary>The piece with the ends that were cut exactly on the line.</summary>
    private static Segment OnLine(Segment s, bool start, bool end, double at) => s with
    {
        Start = start ? new(at, s.Start.Y) : s.Start,
        End = end ? new(at, s.End.Y) : s.End,
    };
}

/// <summary>Edge of a plate from one crossing of a line to the next.</summary>
/// <param name="IsLeft">True when it lies left of the line.</param>
/// <param name="Segments">Its lines and arcs.</param>
internal sealed record EdgeChain(bool IsLeft, List<Segment> Segments)
{
    public Vec2 Start => Segments[0].Start;

    public Vec2 End => Segments[^1].End;
}
