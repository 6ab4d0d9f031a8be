namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// The laws of an offset: its edge lies at the wanted distance, on the right side, the right way round, and none of it is
/// missing.
/// </summary>
internal static class OffsetCheck
{
    /// <summary>The first broken rule of an offset in plain words, or null when it keeps them all.</summary>
    /// <param name="source">The region that was offset.</param>
    /// <param name="result">The offset.</param>
    /// <param name="distance">The wanted distance, mm, with its sign.</param>
    /// <param name="join">The wanted corners; with mitres points may lie farther, up to the limit.</param>
    /// <param name="tolerance">Maximum deviation allowed, mm.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static string? Fault(Region source, Region result, double distance, CornerJoin join, double tolerance,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(join);
        // Loops that touch may reach into each other by the tolerance, and that part of the area is counted twice.
        var doubtful = source.Area * 1e-9 + (source.Loops.Skip(1).Any() ? source.Perimeter * tolerance / 2 : 0);
        if (distance >= 0 && result.Area < source.Area - doubtful) return "growing lost area";
        if (distance <= 0 && result.Area > source.Area + doubtful) return "shrinking gained area";
        if (distance > 0 && source.Islands.FirstOrDefault(i => !result.Contains(InsidePoint.Find(i))) is { } lost)
            return $"the island at {lost.Outer.Segments[0].Start} is lost";
        var outline = new SegmentIndex(source.Segments);
        var inside = new RegionInterior(source);
        var mitres = join.Corners == Corners.Mitre ? new MitreWedges(source, distance, join.MitreLimit) : null;
        var sides = new SideLaw(outline, inside, distance, mitres, tolerance);
        foreach (var loop in result.Loops)
            if (DistanceFault(loop, outline, distance, join, tolerance, cancellation) is { } fault) return fault;
        foreach (var loop in result.Loops)
            if (sides.Fault(loop, cancellation) is { } fault) return fault;
        return new MissingEdges(source, outline, inside, distance, mitres, tolerance).Fault(result, cancellation);
    }

    private static string? DistanceFault(Loop loop, SegmentIndex outline, double distance, CornerJoin join, double tolerance,
        CancellationToken cancellation)
    {
        var (min, max) = (Math.Abs(distance) - tolerance, Math.Abs(distance) * join.MaxReach + tolerance);
        foreach (var segment in loop.Segments)
        {
            cancellation.ThrowIfCancellationRequested();
            foreach (var t in (ReadOnlySpan<double>)[0, 0.5])
            {
                var p = segment.PointAt(t);
                var found = outline.DistanceWithin(p, max);
                if (found < min || found > max)
                    return FormattableString.Invariant($"the point {p} lies {outline.Distance(p):F4} mm from the outline");
            }
        }

        return null;
    }
}
