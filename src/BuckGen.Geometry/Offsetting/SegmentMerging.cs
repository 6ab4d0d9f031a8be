namespace BuckGen.Geometry.Offsetting;

/// <summary>Joins neighbouring pieces of a loop that lie on one line or on one circle.</summary>
internal static class SegmentMerging
{
    /// <summary>The loop with as few pieces as it needs; no arc above half a turn.</summary>
    public static List<Segment> Merge(List<Segment> chain)
    {
        var merged = new List<Segment>(chain.Count);
        foreach (var piece in chain)
        {
            // Ends are set exactly on each other here; they differ by no more than the joining distance.
            var segment = merged.Count > 0 ? piece with { Start = merged[^1].End } : piece;
            if (IsNothing(segment)) continue;
            if (merged.Count > 0 && Joined(merged[^1], segment) is { } one) merged[^1] = one;
            else merged.Add(segment);
        }

        while (merged.Count > 2 && Joined(merged[^1], merged[0] with { Start = merged[^1].End }) is { } closing)
        {
            merged[0] = closing;
            merged.RemoveAt(merged.Count - 1);
        }

        while (merged.Count > 2 && IsNothing(merged[^1] with { End = merged[0].Start })) merged.RemoveAt(merged.Count - 1);
        return merged;
    }

    /// <summary>Of the shortest pieces nothing may be left when the ends beside them are set on each other.</summary>
    private static bool IsNothing(Segment segment) => segment.Start == segment.End || segment.Length <= Precision.MinPieceLength;

    private static Segment? Joined(Segment a, Segment b)
    {
        if (a.IsArc != b.IsArc) return null;
        if (!a.IsArc)
            return a.Chord.Dot(b.Chord) > 0
                && new Segment(a.Start, b.End).DistanceTo(a.End) < Precision.MinPieceLength ? new(a.Start, b.End) : null;
        if (a.Bulge > 0 != b.Bulge > 0 || Math.Abs(a.Sweep + b.Sweep) > Math.PI + 1e-9) return null;
        if (a.Centre.DistanceTo(b.Centre) > Precision.Join || Math.Abs(a.Radius - b.Radius) > Precision.Join) return null;
        return Segment.Arc(a.Start, b.End, a.Sweep + b.Sweep);
    }
}
