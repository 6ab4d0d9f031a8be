namespace BuckGen.Geometry;

/// <summary>Where a level line runs through a region.</summary>
internal static class LevelCut
{
    /// <summary>The stretches of the line y = height that lie in the region, from left to right.</summary>
    public static IReadOnlyList<(double From, double To)> Find(Region region, double height)
    {
        var crossings = new List<double>();
        foreach (var loop in region.Loops)
            if (loop.Bounds.MinY <= height && height <= loop.Bounds.MaxY)
                foreach (var segment in loop.Segments) AddCrossings(segment, height, crossings);
        crossings.Sort();
        var stretches = new List<(double From, double To)>();
        for (var i = 0; i + 1 < crossings.Count; i++)
        {
            var (from, to) = (crossings[i], crossings[i + 1]);
            if (to <= from || !region.Contains(new((from + to) / 2, height))) continue;
            if (stretches.Count > 0 && stretches[^1].To == from) stretches[^1] = (stretches[^1].From, to);
            else stretches.Add((from, to));
        }

        return stretches;
    }

    /// <summary>
    /// A height at which the line runs a long way through the region: the best of several evenly spread ones, the lowest of
    /// equals.
    /// </summary>
    public static double FindBestHeight(Region region, int candidates)
    {
        var box = region.Bounds;
        return Enumerable.Range(1, candidates).Select(i => box.MinY + box.Height * i / (candidates + 1.0))
            .MaxBy(y => Math.Round(Find(region, y).Sum(s => s.To - s.From), 3));
    }

    private static void AddCrossings(in Segment s, double height, List<double> found)
    {
        if (!s.IsArc)
        {
            var rise = s.End.Y - s.Start.Y;
            var t = (height - s.Start.Y) / rise;
            // A level line has no crossing of its own; its neighbours have.
            if (rise != 0 && t is >= 0 and <= 1) found.Add(s.Start.X + (s.End.X - s.Start.X) * t);
            return;
        }

        var (centre, radius) = (s.Centre, s.Radius);
        var across = radius * radius - (height - centre.Y) * (height - centre.Y);
        if (across < 0) return;
        foreach (var x in (ReadOnlySpan<double>)[centre.X - Math.Sqrt(across), centre.X + Math.Sqrt(across)])
            if (s.ParameterOf(new(x, height)) is >= 0 and <= 1) found.Add(x);
    }
}
