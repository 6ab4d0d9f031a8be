namespace BuckGen.Geometry.Offsetting;

/// <summary>Where loops come nearest to each other.</summary>
internal static class Closeness
{
    /// <summary>A point of one loop nearest to any of the others, to the spacing of its corners and arc middles.</summary>
    public static Vec2 Place(Loop loop, IEnumerable<Loop> others)
    {
        var index = new SegmentIndex(others.SelectMany(o => o.Segments));
        var (best, reach) = (loop.Segments[0].Start, double.MaxValue);
        foreach (var segment in loop.Segments)
        {
            foreach (var t in (ReadOnlySpan<double>)[0, 0.25, 0.5, 0.75])
            {
                var p = segment.PointAt(t);
                var distance = reach == double.MaxValue ? index.Distance(p) : index.DistanceWithin(p, reach);
                if (distance < reach) (best, reach) = (p, distance);
            }
        }

        return best;
    }
}
