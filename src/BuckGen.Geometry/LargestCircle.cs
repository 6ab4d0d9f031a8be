namespace BuckGen.Geometry;

/// <summary>The largest circle inside a piece of the plane.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Its radius, mm.</param>
internal sealed record LargestCircle(Vec2 Centre, double Radius)
{
    /// <summary>The radius is found to this share of the piece's size.</summary>
    private const double Share = 1e-4;

    /// <summary>The largest circle in an island.</summary>
    public static LargestCircle In(Island island) => new Search(island).Run();

    /// <summary>
    /// Squares are quartered, the one that may hold the centre of the largest circle first, until none can hold a larger one's.
    /// </summary>
    /// <remarks>
    /// No place lies farther from the edge than from any point of it, so no farther than the mean distance to two. Each square
    /// knows the pieces that may be nearest to a place in it, so that a small one looks at few.
    /// </remarks>
    private sealed class Search
    {
        private readonly Segment[] pieces;
        private readonly Vec2[] nearest;
        private readonly double[] distances;
        private readonly LoopInterior[] loops;
        private readonly Bounds bounds;
        private readonly double tolerance;
        private readonly PriorityQueue<Square, double> squares = new();
        private LargestCircle best;

        public Search(Island island)
        {
            pieces = [.. island.Loops.SelectMany(l => l.Segments)];
            (nearest, distances) = (new Vec2[pieces.Length], new double[pieces.Length]);
            loops = [.. island.Loops.Select(l => new LoopInterior(l))];
            bounds = island.Outer.Bounds;
            tolerance = bounds.Diagonal * Share;
            var inside = InsidePoint.Find(island);
            best = new(inside, pieces.Min(p => p.DistanceTo(inside)));
        }

        public LargestCircle Run()
        {
            Look(bounds.Centre, Math.Max(bounds.Width, bounds.Height) / 2, [.. Enumerable.Range(0, pieces.Length)]);
            while (squares.TryDequeue(out var square, out var limit) && -limit > best.Radius + tolerance)
            {
                var half = square.Half / 2;
                for (var i = 0; i < 4; i++) Look(square.Centre + Corner(i, half), half, square.Near);
            }

            return best;
        }

        private void Look(Vec2 centre, double half, int[] near)
        {
            var (first, reach) = (near[0], half * Math.Sqrt(2));
            foreach (var i in near)
            {
                nearest[i] = pieces[i].PointAt(pieces[i].NearestParameter(centre));
                distances[i] = nearest[i].DistanceTo(centre);
                if (distances[i] < distances[first]) first = i;
            }

            var distance = distances[first];
            if (distance + reach <= best.Radius + tolerance) return;
            var isInside = IsInside(centre);
            if (isInside && distance > best.Radius) best = new(centre, distance);
            // Beyond the edge a place loses on the way to it what it can gain inside.
            var limit = isInside ? distance + reach : reach - distance;
            near = [.. near.Where(i => distances[i] <= distance + 2 * reach)];
            foreach (var i in near) limit = Math.Min(limit, MaxMean(centre, half, nearest[first], nearest[i]));
            if (limit > best.Radius + tolerance) squares.Enqueue(new(centre, half, near), -limit);
        }

        private bool IsInside(Vec2 p) => loops[0].Contains(p) && !loops.Skip(1).Any(l => l.Contains(p));

        /// <summary>The mean distance to two points, where it is largest in a square: at a corner, since it is convex.</summary>
        private static double MaxMean(Vec2 centre, double half, Vec2 a, Vec2 b)
        {
            var max = 0.0;
            for (var i = 0; i < 4; i++)
                if (centre + Corner(i, half) is var p) max = Math.Max(max, (p.DistanceTo(a) + p.DistanceTo(b)) / 2);
            return max;
        }

        private static Vec2 Corner(int number, double half) => new(number % 2 == 0 ? -half : half, number < 2 ? -half : half);

        private sealed record Square(Vec2 Centre, double Half, int[] Near);
    }
}
