using BuckGen.Geometry.Offsetting;

namespace BuckGen.Geometry.Facing;

/// <summary>
/// A narrow place: two points of the edge with nothing between them, at which the edge runs square to the way across.
/// </summary>
/// <param name="A">One side.</param>
/// <param name="B">The other side.</param>
/// <param name="ThroughWood">True when the way across lies in the region, false when it lies outside.</param>
/// <param name="Detour">The shorter way from one side to the other along the edge, mm; infinite between different loops.</param>
internal sealed record NarrowPlace(Vec2 A, Vec2 B, bool ThroughWood, double Detour)
{
    /// <summary>How wide it is, mm.</summary>
    public double Width => A.DistanceTo(B);

    /// <summary>Its middle.</summary>
    public Vec2 Middle => A.MidpointTo(B);
}

/// <summary>Finds the narrow places of a region.</summary>
/// <remarks>
/// Two points are a narrow place when the circle whose diameter joins them holds no other point of the edge. The circle then
/// touches the edge at both ends of a diameter. Its middle is a saddle of the distance to the edge, as the medial axis would give
/// it. Between any two lines or arcs only the nearest points can be one; they are found exactly.
/// </remarks>
internal static class FacingEdges
{
    /// <summary>A circle may be entered by this share of its radius: rounding.</summary>
    private const double Slack = 1e-6;

    /// <summary>All narrow places no wider than a reach, narrowest first.</summary>
    /// <param name="region">The region.</param>
    /// <param name="reach">Maximum width looked for, mm.</param>
    /// <param name="minDetour">Minimum way round, mm, for a width: places nearer together along the edge are left out.</param>
    public static List<NarrowPlace> Within(Region region, double reach, Func<double, double>? minDetour = null)
    {
        var pieces = Numbered(region);
        var index = new SegmentIndex(pieces.Select(p => p.Segment));
        var found = new List<NarrowPlace>();
        for (var i = 0; i < pieces.Length; i++)
        {
            foreach (var j in index.IndicesIntersecting(pieces[i].Segment.Bounds.Grown(reach)))
            {
                if (j <= i || (minDetour is not null && IsTooNearAlong(pieces[i], pieces[j], minDetour))) continue;
                if (Across(pieces[i], pieces[j]) is not { } way || way.Width > reach || way.Width == 0) continue;
                if (minDetour is not null && way.Detour < minDetour(way.Width)) continue;
                if (IsEntered(way.Middle, way.Width / 2, pieces, pieces[i], pieces[j])) continue;
                if (index.DistanceWithin(way.Middle, way.Width / 2) >= way.Width / 2 * (1 - Slack))
                    found.Add(way with { ThroughWood = region.Contains(way.Middle) });
            }
        }

        return [.. found.OrderBy(p => p.Width)];
    }

    /// <summary>A quick no from lengths alone: the way across is at least the distance of the bounds.</summary>
    private static bool IsTooNearAlong(Piece a, Piece b, Func<double, double> minDetour)
    {
        if (a.Loop != b.Loop) return false;
        var along = Math.Abs(b.Before - a.Before);
        var longest = Math.Min(along, a.Loop.Length - along) + a.Segment.Length + b.Segment.Length;
        return longest < minDetour(a.Segment.Bounds.DistanceTo(b.Segment.Bounds));
    }

    /// <summary>The way across between two pieces that do not share a corner.</summary>
    private static NarrowPlace? Across(Piece a, Piece b)
    {
        if (a.Segment.End == b.Segment.Start || b.Segment.End == a.Segment.Start) return null;
        var (p, q) = ClosestPoints.Between(a.Segment, b.Segment);
        if (a.Loop != b.Loop) return new(p, q, false, double.PositiveInfinity);
        var along = Math.Abs(b.Before + (q - b.Segment.Start).Length - a.Before - (p - a.Segment.Start).Length);
        return new(p, q, false, Math.Min(along, a.Loop.Length - along));
    }

    /// <summary>A quick no: most circles are entered by a piece beside one of the two.</summary>
    private static bool IsEntered(Vec2 middle, double radius, Piece[] pieces, Piece a, Piece b) =>
        pieces[a.Previous].Segment.DistanceTo(middle) < radius * (1 - Slack)
            || pieces[a.Next].Segment.DistanceTo(middle) < radius * (1 - Slack)
        || pieces[b.Previous].Segment.DistanceTo(middle) < radius * (1 - Slack)
        || pieces[b.Next].Segment.DistanceTo(middle) < radius * (1 - Slack);

    private static Piece[] Numbered(Region region)
    {
        var pieces = new List<Piece>();
        foreach (var loop in region.Loops)
        {
            var (first, count, before) = (pieces.Count, loop.Segments.Length, 0.0);
            for (var i = 0; i < count; i++)
            {
                pieces.Add(new(loop.Segments[i], loop, before, first + (i + count - 1) % count, first + (i + 1) % count));
                before += loop.Segments[i].Length;
            }
        }

        return [.. pieces];
    }

    private sealed record Piece(Segment Segment, Loop Loop, double Before, int Previous, int Next);
}
