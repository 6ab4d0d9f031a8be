namespace BuckGen.Geometry.Offsetting;

/// <summary>The distance law: every point of an offset lies at the asked distance from the outline it came from.</summary>
internal static class OffsetCheck
{
    /// <summary>The first broken rule of an offset in plain words, or null when it keeps them all.</summary>
    /// <param name="source">The region that was offset.</param>
    /// <param name="result">The offset.</param>
    /// <param name="distance">The asked distance, mm, with its sign.</param>
    /// <param name="join">The asked corners; with mitres points may lie farther, up to the limit.</param>
    /// <param name="tolerance">Largest deviation allowed, mm.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static string? Fault(Region source, Region result, double distance, CornerJoin join, double tolerance, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(join);
        if (distance >= 0 && result.Area < source.Area * (1 - 1e-9)) return "growing lost area";
        if (distance <= 0 && result.Area > source.Area * (1 + 1e-9)) return "shrinking gained area";
        if (distance > 0 && source.Islands.FirstOrDefault(i => !result.Contains(InsidePoint.Of(i))) is { } lost)
            return $"the island at {lost.Outer.Segments[0].Start} is lost";
        var (least, most) = (Math.Abs(distance) - tolerance, Math.Abs(distance) * join.FarthestReach + tolerance);
        var nearby = new SegmentIndex(source.Segments);
        foreach (var segment in result.Segments)
        {
            cancellation.ThrowIfCancellationRequested();
            foreach (var t in (ReadOnlySpan<double>)[0, 0.5])
            {
                var p = segment.PointAt(t);
                var found = nearby.DistanceWithin(p, most);
                if (found < least || found > most)
                    return FormattableString.Invariant($"the point {p} lies {found:F4} mm from the outline");
            }
        }

        return join.Corners == Corners.Round ? Gap(source, result, nearby, distance, tolerance, cancellation) : null;
    }

    /// <summary>
    /// A point at the full distance from the outline, with room beyond it, that is on no edge of the result: a loop is missing.
    /// </summary>
    private static string? Gap(Region source, Region result, SegmentIndex outline, double distance, double tolerance, CancellationToken cancellation)
    {
        var edges = new SegmentIndex(result.Segments);
        foreach (var segment in source.Segments)
        {
            cancellation.ThrowIfCancellationRequested();
            var aside = segment.DirectionAt(0.5).Left * -Math.Sign(distance);
            var p = segment.PointAt(0.5) + aside * Math.Abs(distance);
            // Where two sides meet exactly half-way the result may end in a line, which is no edge.
            var room = Math.Abs(distance) + 4 * tolerance;
            if (outline.DistanceWithin(segment.PointAt(0.5) + aside * room, room) >= room - tolerance / 10
                && edges.DistanceWithin(p, tolerance) > tolerance
                // Where islands touch, the other side of an edge is no open air.
                && source.Contains(p) == distance < 0) return $"no edge runs through {p}";
        }

        return null;
    }
}
