namespace BuckGen.Geometry.Offsetting;

/// <summary>The distance law: every point of an offset lies at the asked distance from the outline it came from.</summary>
public static class OffsetCheck
{
    /// <summary>The first broken rule of an offset in plain words, or null when it keeps them all.</summary>
    /// <param name="source">The region that was offset.</param>
    /// <param name="result">The offset.</param>
    /// <param name="distance">The asked distance, mm, with its sign.</param>
    /// <param name="join">The asked corners; with mitres points may lie farther, up to the limit.</param>
    /// <param name="tolerance">Largest deviation allowed, mm.</param>
    public static string? Fault(Region source, Region result, double distance, CornerJoin join, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(join);
        if (distance >= 0 && result.Area < source.Area * (1 - 1e-9)) return "growing lost area";
        if (distance <= 0 && result.Area > source.Area * (1 + 1e-9)) return "shrinking gained area";
        var (least, most) = (Math.Abs(distance) - tolerance, Math.Abs(distance) + tolerance);
        if (join.Corners == Corners.Mitre) most = Math.Abs(distance) * join.MitreLimit + tolerance;
        var nearby = new SegmentIndex(source.Segments);
        foreach (var segment in result.Segments)
        {
            foreach (var t in (ReadOnlySpan<double>)[0, 0.5])
            {
                var p = segment.PointAt(t);
                var found = nearby.DistanceWithin(p, most);
                if (found < least || found > most)
                    return FormattableString.Invariant($"the point {p} lies {found:F4} mm from the outline");
            }
        }

        return null;
    }
}
