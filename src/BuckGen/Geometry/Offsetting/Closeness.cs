namespace BuckGen.Geometry.Offsetting;

/// <summary>Where loops come nearest to each other.</summary>
internal static class Closeness
{
    /// <summary>Where loops meet when they grow: each, nearest first, to those that have met before.</summary>
    /// <returns>One place fewer than there are loops.</returns>
    public static IEnumerable<Vec2> Joints(IEnumerable<Loop> loops)
    {
        var apart = loops.ToList();
        var met = new List<Loop> { apart[0] };
        apart.RemoveAt(0);
        while (apart.Count > 0)
        {
            var (next, nearest) = apart.Select(l => (Loop: l, Nearest: Nearest(l, met))).MinBy(n => n.Nearest.Distance);
            yield return nearest.Place;
            apart.Remove(next);
            met.Add(next);
        }
    }

    /// <summary>A point of one loop nearest to any of the others, to the spacing of its corners and arc middles.</summary>
    public static Vec2 Place(Loop loop, IEnumerable<Loop> others) => Nearest(loop, others).Place;

    private static (Vec2 Place, double Distance) Nearest(Loop loop, IEnumerable<Loop> others)
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

        return (best, reach);
    }
}
