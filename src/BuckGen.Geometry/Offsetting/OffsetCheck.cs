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
        return Fault(new PreparedRegion(source), result, distance, join, tolerance, cancellation);
    }

    /// <summary>The same for a region that was prepared once for several distances.</summary>
    /// <param name="prepared">The region that was offset.</param>
    /// <param name="result">The offset.</param>
    /// <param name="distance">The wanted distance, mm, with its sign.</param>
    /// <param name="join">The wanted corners; with mitres points may lie farther, up to the limit.</param>
    /// <param name="tolerance">Maximum deviation allowed, mm.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static string? Fault(PreparedRegion prepared, Region result, double distance, CornerJoin join, double tolerance,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(prepared);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(join);
        var source = prepared.Region;
        // Loops that touch may reach into each other by the tolerance, and that part of the area is counted twice.
        var doubtful = source.Area * 1e-9 + (source.Loops.Skip(1).Any() ? source.Perimeter * tolerance / 2 : 0);
        if (distance >= 0 && result.Area < source.Area - doubtful) return "growing lost area";
        if (distance <= 0 && result.Area > source.Area + doubtful) return "shrinking gained area";
        if (distance > 0 && source.Islands.FirstOrDefault(i => !result.Contains(InsidePoint.Find(i))) is { } lost)
            return $"the island at {lost.Outer.Segments[0].Start} is lost";
        var (outline, inside) = (prepared.Edges, prepared.Inside);
        var mitres = join.Corners == Corners.Mitre ? new MitreWedges(source, distance, join.MitreLimit) : null;
        var sides = new SideLaw(outline, inside, distance, mitres, tolerance);
        var nearest = new NearestPiece[result.Loops.Sum(l => l.Segments.Length)];
        var start = 0;
        foreach (var loop in result.Loops)
        {
            var ofLoop = nearest.AsSpan(start, loop.Segments.Length);
            if (DistanceFault(loop, outline, distance, join, tolerance, ofLoop, cancellation) is { } fault) return fault;
            start += loop.Segments.Length;
        }

        start = 0;
        foreach (var loop in result.Loops)
        {
            if (sides.Fault(loop, nearest.AsSpan(start, loop.Segments.Length), cancellation) is { } fault) return fault;
            start += loop.Segments.Length;
        }

        return new MissingEdges(source, outline, inside, distance, mitres, tolerance).Fault(result, cancellation);
    }

    /// <summary>The first point too near or too far, or null; also finds what is nearest to the middle of every piece.</summary>
    private static string? DistanceFault(Loop loop, SegmentIndex outline, double distance, CornerJoin join, double tolerance,
        Span<NearestPiece> nearest, CancellationToken cancellation)
    {
        var (min, max) = (Math.Abs(distance) - tolerance, Math.Abs(distance) * join.MaxReach + tolerance);
        for (var i = 0; i < nearest.Length; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            var segment = loop.Segments[i];
            nearest[i] = outline.Nearest(segment.PointAt(0.5), max);
            if (Fault(segment.Start, outline.DistanceWithin(segment.Start, max)) is { } atStart) return atStart;
            if (Fault(segment.PointAt(0.5), nearest[i].Distance) is { } inMiddle) return inMiddle;
        }

        return null;

        string? Fault(Vec2 p, double found) => found >= min && found <= max ? null
            : FormattableString.Invariant($"the point {p} lies {outline.Distance(p):F4} mm from the outline");
    }
}
