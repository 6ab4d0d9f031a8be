namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// Finds places through which an edge of an offset must run and none does: a loop is missing, or a part of one.
/// </summary>
internal sealed class MissingEdges
{
    private const int MaxPlaces = 8;
    private const double SharpTurn = 0.05;
    private readonly Region source;
    private readonly SegmentIndex outline;
    private readonly RegionInterior inside;
    private readonly double distance, tolerance;
    private readonly MitreWedges? mitres;

    /// <param name="source">The region that was offset.</param>
    /// <param name="outline">Its edge.</param>
    /// <param name="inside">Where it is.</param>
    /// <param name="distance">The distance, mm, with its sign.</param>
    /// <param name="mitres">What mitres add; null with round corners.</param>
    /// <param name="tolerance">Maximum deviation allowed, mm.</param>
    public MissingEdges(Region source, SegmentIndex outline, RegionInterior inside, double distance, MitreWedges? mitres,
        double tolerance)
    {
        (this.source, this.outline, this.inside, this.distance, this.mitres, this.tolerance) = (source, outline, inside, distance,
            mitres, tolerance);
    }

    /// <summary>The first place where an edge is missing, or null.</summary>
    public string? Fault(Region result, CancellationToken cancellation)
    {
        var edges = new SegmentIndex(result.Segments);
        foreach (var (foot, away) in Places())
        {
            cancellation.ThrowIfCancellationRequested();
            var p = foot + away * Math.Abs(distance);
            // Where two sides meet exactly half-way the result may end in a line, which is no edge.
            var room = Math.Abs(distance) + 4 * tolerance;
            if (!outline.IsAnyNearer(foot + away * room, room - tolerance / 10)
                && !edges.IsAnyNearer(p, tolerance)
                // Where islands touch, the other side of an edge is no open air.
                && inside.Contains(p) == distance < 0
                && mitres?.Cover(p, tolerance) != true) return $"no edge runs through {p}";
        }

        return null;
    }

    /// <summary>
    /// Points of the outline and the direction in which the offset lies from there: along the pieces and at the corners that
    /// open.
    /// </summary>
    private IEnumerable<(Vec2 Foot, Vec2 Away)> Places()
    {
        foreach (var loop in source.Loops)
        {
            for (var i = 0; i < loop.Segments.Length; i++)
            {
                var (segment, next) = (loop.Segments[i], loop.Segments[(i + 1) % loop.Segments.Length]);
                var count = (int)Math.Clamp(segment.Length / Math.Abs(distance), 1, MaxPlaces);
                for (var k = 0; k < count; k++)
                    yield return (segment.PointAt((k + 0.5) / count), Away(segment, (k + 0.5) / count));
                var turn = segment.DirectionAt(1).AngleTo(next.DirectionAt(0));
                if (Math.Abs(turn) > SharpTurn && turn > 0 == distance > 0)
                    yield return (segment.End, Away(segment, 1).Turned(turn / 2));
            }
        }
    }

    private Vec2 Away(Segment segment, double t) => segment.DirectionAt(t).Left * -Math.Sign(distance);
}
