namespace BuckGen.Geometry.Offsetting;

/// <summary>Where loops come nearest to each other.</summary>
internal static class Closeness
{
    /// <summary>Where loops meet when they grow: each, nearest first, to those that have met before.</summary>
    /// <returns>One place fewer than there are loops.</returns>
    public static IEnumerable<Vec2> Joints(IEnumerable<Loop> loops)
    {
        List<Approach> apart = [.. loops.Select(l => new Approach(l))];
        var met = apart[0];
        apart.RemoveAt(0);
        while (apart.Count > 0)
        {
            var edge = new Edge(met.Loop);
            foreach (var loop in apart) loop.Meet(edge);
            met = apart.MinBy(a => a.Distance)!;
            apart.Remove(met);
            yield return met.Place;
        }
    }

    /// <summary>A point of one loop nearest to any of the others, to the spacing of its corners and arc middles.</summary>
    public static Vec2 Place(Loop loop, IEnumerable<Loop> others)
    {
        var approach = new Approach(loop);
        foreach (var other in others) approach.Meet(new(other));
        return approach.Place;
    }

    /// <summary>A loop that others are compared with; its index is made when the first comes near.</summary>
    private sealed class Edge(Loop loop)
    {
        private SegmentIndex? index;

        public Bounds Bounds => loop.Bounds;

        public SegmentIndex Index => index ??= new(loop.Segments);
    }

    /// <summary>How near a loop has come to any of those it has been compared with, and where.</summary>
    private sealed class Approach(Loop loop)
    {
        private const double Rounding = 1e-9;
        private static readonly double[] Samples = [0, 0.25, 0.5, 0.75];

        private int nearest = int.MaxValue;

        public Loop Loop => loop;

        public double Distance { get; private set; } = double.MaxValue;

        public Vec2 Place { get; private set; } = loop.Segments[0].Start;

        /// <summary>Compares it with one more loop; the bounds show that most lie farther away than an earlier one.</summary>
        public void Meet(Edge other)
        {
            if (loop.Bounds.DistanceTo(other.Bounds) > Distance + Rounding) return;
            for (var i = 0; i < loop.Segments.Length * Samples.Length; i++)
            {
                var p = loop.Segments[i / Samples.Length].PointAt(Samples[i % Samples.Length]);
                if (other.Bounds.DistanceTo(Bounds.FromCorners(p, p)) > Distance + Rounding) continue;
                var distance = Distance == double.MaxValue ? other.Index.Distance(p) : other.Index.DistanceWithin(p, Distance);
                // Of equals the one that comes first along the loop, whichever loop it is near to.
                if (distance < Distance || (distance == Distance && i < nearest)) (Distance, nearest, Place) = (distance, i, p);
            }
        }
    }
}
