namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// The law of sides: wood that grows has its new edge in the air and wood that shrinks in the wood, and to the left of every edge
/// lies wood.
/// </summary>
/// <param name="outline">The edge of the region that was offset.</param>
/// <param name="inside">Where that region is.</param>
/// <param name="distance">The distance, mm, with its sign.</param>
/// <param name="mitres">What mitres add; null with round corners.</param>
/// <param name="tolerance">Maximum deviation allowed, mm.</param>
internal sealed class SideLaw(SegmentIndex outline, RegionInterior inside, double distance, MitreWedges? mitres, double tolerance)
{
    private readonly double aside = Math.Min(tolerance, Math.Abs(distance) / 2);

    private double MaxFromEdge => Math.Abs(distance) + 2 * tolerance;

    /// <summary>The first broken rule of one loop of an offset that keeps the distance, or null.</summary>
    public string? Fault(Loop loop, CancellationToken cancellation = default) => Fault(
        loop, [.. loop.Segments.Select(s => outline.Nearest(s.PointAt(0.5), MaxFromEdge))], cancellation);

    /// <summary>The same when it is known what is nearest.</summary>
    /// <param name="loop">The loop.</param>
    /// <param name="nearest">What of the outline is nearest to the middle of each piece, as far as that was searched.</param>
    /// <param name="cancellation">Stops the work.</param>
    public string? Fault(Loop loop, ReadOnlySpan<NearestPiece> nearest, CancellationToken cancellation)
    {
        var longest = loop.Segments.MaxBy(s => s.Length);
        for (var i = 0; i < loop.Segments.Length; i++)
        {
            var segment = loop.Segments[i];
            cancellation.ThrowIfCancellationRequested();
            // An edge that keeps the distance changes sides only where it is long enough to reach across the outline.
            if (segment == longest || segment.Length > 2 * Math.Abs(distance))
                if (IsOnWrongSide(segment.PointAt(0.5)))
                    return FormattableString.Invariant(
                        $"the edge at {segment.PointAt(0.5)} lies {(distance > 0 ? "in the material" : "in the air")}");
            // The direction of the shortest pieces is left to rounding.
            if ((segment == longest || segment.Length >= tolerance)
                && HasWrongOrientation(segment, nearest[i].Within(MaxFromEdge)))
                return FormattableString.Invariant($"the edge at {segment.PointAt(0.5)} has its material on the wrong side");
        }

        return null;
    }

    private bool IsOnWrongSide(Vec2 p) =>
        // As near to the outline as the edge may deviate, both sides are right.
        inside.Contains(p) == distance > 0 && outline.DistanceWithin(p, tolerance) > tolerance;

    /// <summary>Growing wood has the outline it came from on its left, shrinking wood on its right.</summary>
    private bool HasWrongOrientation(Segment segment, NearestPiece nearest)
    {
        var (p, most) = (segment.PointAt(0.5), MaxFromEdge);
        var toLeft = segment.DirectionAt(0.5).Left;
        // Where the nearest of the outline clearly lies to the right side, there is no more to ask.
        if (nearest.Number >= 0
            && (outline.PointNearest(nearest.Number, p) - p).Dot(toLeft) * Math.Sign(distance) > nearest.Distance / 2)
            return false;
        var left = toLeft * aside;
        var (atLeft, atRight) = (outline.DistanceWithin(p + left, most), outline.DistanceWithin(p - left, most));
        // Farther away are the sides of mitres; what is nearest to them may be anything.
        if (double.IsInfinity(atLeft) || double.IsInfinity(atRight)) return false;
        return (atLeft - atRight) * Math.Sign(distance) > aside
            && mitres?.Cover(distance > 0 ? p + left : p - left, aside) != true;
    }
}
