namespace BuckGen.Geometry;

/// <summary>Where a level line runs through a region.</summary>
internal static class LevelCut
{
    /// <summary>The stretches of the line y = height that lie in the region, from left to right.</summary>
    public static IReadOnlyList<(double From, double To)> Find(Region region, double height)
    {
        var crossings = region.Segments.SelectMany(s => Crossings(s, height)).Order().ToArray();
        var stretches = new List<(double From, double To)>();
        for (var i = 0; i + 1 < crossings.Length; i++)
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

    private static IEnumerable<double> Crossings(Segment s, double height)
    {
        if (!s.IsArc)
        {
            var t = (height - s.Start.Y) / s.Chord.Y;
            // A level line has no crossing of its own; its neighbours have.
            if (s.Chord.Y != 0 && t is >= 0 and <= 1) yield return s.Start.X + s.Chord.X * t;
            yield break;
        }

        var across = s.Radius * s.Radius - (height - s.Centre.Y) * (height - s.Centre.Y);
        if (across < 0) yield break;
        foreach (var x in (double[])[s.Centre.X - Math.Sqrt(across), s.Centre.X + Math.Sqrt(across)])
            if (s.ParameterOf(new(x, height)) is >= 0 and <= 1) yield return x;
    }
}
