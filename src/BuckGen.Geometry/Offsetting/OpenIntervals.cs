namespace BuckGen.Geometry.Offsetting;

/// <summary>The parts of one moved piece that no zone has removed so far.</summary>
internal sealed class OpenIntervals
{
    private List<(double From, double To)> intervals = [];
    private List<(double From, double To)> scratch = [];

    public IReadOnlyList<(double From, double To)> Intervals => intervals;

    public bool IsEmpty => intervals.Count == 0;

    /// <summary>Starts again with the whole piece.</summary>
    public void Reset()
    {
        intervals.Clear();
        intervals.Add((0, 1));
    }

    /// <summary>Removes what lies inside a zone.</summary>
    public void Remove(Carrier piece, ForbiddenZone zone)
    {
        if (!zone.Bounds.Intersects(piece.Bounds)) return;
        if (Covers(zone, piece))
        {
            intervals.Clear();
            return;
        }

        Span<double> space = stackalloc double[16];
        var crossings = new ParameterList(space);
        zone.AddCrossings(piece, ref crossings);
        var cuts = crossings.Sorted;
        scratch.Clear();
        foreach (var (from, to) in intervals)
        {
            var start = from;
            foreach (var cut in cuts)
            {
                if (cut <= start || cut >= to) continue;
                Keep(piece, zone, start, cut);
                start = cut;
            }

            Keep(piece, zone, start, to);
        }

        (intervals, scratch) = (scratch, intervals);
    }

    /// <summary>Removes everything between two parameters.</summary>
    public void Remove(double start, double end)
    {
        scratch.Clear();
        foreach (var (from, to) in intervals)
        {
            if (from < start) scratch.Add((from, Math.Min(to, start)));
            if (to > end) scratch.Add((Math.Max(from, end), to));
        }

        (intervals, scratch) = (scratch, intervals);
    }

    /// <summary>A quick yes: a convex zone holds the whole piece if it holds the corners of a triangle round it.</summary>
    private static bool Covers(ForbiddenZone zone, Carrier piece)
    {
        if (!zone.IsConvex || !zone.Contains(piece.Start) || !zone.Contains(piece.Segment.End)) return false;
        if (!piece.IsArc) return true;
        // The tangents at both ends meet at the apex; for more than a third of a turn the triangle is too large to be of use.
        return Math.Abs(piece.Sweep) < 2 && zone.Contains(
            piece.Start + piece.Segment.DirectionAt(0) * (piece.Radius * Math.Tan(Math.Abs(piece.Sweep) / 2)));
    }

    private void Keep(Carrier piece, ForbiddenZone zone, double from, double to)
    {
        if (zone.Contains(piece.Segment.PointAt((from + to) / 2))) return;
        if (scratch.Count > 0 && scratch[^1].To == from) scratch[^1] = (scratch[^1].From, to);
        else scratch.Add((from, to));
    }
}
