namespace BuckGen.Geometry.Offsetting;

/// <summary>The parts of one moved piece that no zone has taken away so far.</summary>
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

    /// <summary>Takes away what lies inside a zone.</summary>
    public void Remove(in Carrier piece, ForbiddenZone zone)
    {
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

    private void Keep(in Carrier piece, ForbiddenZone zone, double from, double to)
    {
        if (zone.Contains(piece.Segment.PointAt((from + to) / 2))) return;
        if (scratch.Count > 0 && scratch[^1].To == from) scratch[^1] = (scratch[^1].From, to);
        else scratch.Add((from, to));
    }
}
