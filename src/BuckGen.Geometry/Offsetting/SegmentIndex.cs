namespace BuckGen.Geometry.Offsetting;

/// <summary>Finds the pieces of an outline near a place.</summary>
internal sealed class SegmentIndex
{
    /// <summary>First radius of the search for the nearest piece, mm; it doubles until a piece is found.</summary>
    private const double FirstReach = 1;

    private readonly Segment[] segments;
    private readonly BoxTree tree;

    public SegmentIndex(IEnumerable<Segment> segments)
    {
        this.segments = [.. segments];
        tree = new(BoundsOf(this.segments));
    }

    /// <summary>The distance to the nearest piece, mm; infinite when none lies within the reach.</summary>
    public double DistanceWithin(Vec2 p, double reach) => Nearest(p, reach).Distance;

    /// <summary>The nearest piece; <see cref="NearestPiece.None"/> when none lies within the reach.</summary>
    public NearestPiece Nearest(Vec2 p, double reach)
    {
        var (nearest, number, limit) = (double.PositiveInfinity, -1, reach);
        var walk = new BoxTree.Walk(tree);
        while (!walk.IsDone)
        {
            if (IsBeyond(walk.Box, p, limit)) walk.Pass();
            else if (!walk.IsItem) walk.Enter();
            else
            {
                var distance = segments[walk.Item].DistanceTo(p);
                if (distance <= limit && distance < nearest) (nearest, number, limit) = (distance, walk.Item, distance);
                walk.Pass();
            }
        }

        return new(number, nearest);
    }

    /// <summary>The point of one piece nearest to a given one.</summary>
    public Vec2 PointNearest(int number, Vec2 p) => segments[number].PointAt(segments[number].NearestParameter(p));

    /// <summary>True when a piece lies nearer than a limit, mm.</summary>
    public bool IsAnyNearer(Vec2 p, double limit)
    {
        var walk = new BoxTree.Walk(tree);
        while (!walk.IsDone)
        {
            if (IsBeyond(walk.Box, p, limit)) walk.Pass();
            else if (!walk.IsItem) walk.Enter();
            else if (segments[walk.Item].DistanceTo(p) < limit) return true;
            else walk.Pass();
        }

        return false;
    }

    /// <summary>The distance to the nearest piece, mm; infinite when there is no piece.</summary>
    public double Distance(Vec2 p)
    {
        if (segments.Length == 0) return double.PositiveInfinity;
        for (var reach = FirstReach; ; reach *= 2)
            if (DistanceWithin(p, reach) is var distance && !double.IsInfinity(distance)) return distance;
    }

    /// <summary>The numbers of the pieces whose bounds meet a rectangle.</summary>
    public BoxTree.Hits IndicesIntersecting(Bounds bounds) => tree.Query(bounds);

    /// <summary>The pieces whose bounds meet a rectangle.</summary>
    public IEnumerable<Segment> Intersecting(Bounds bounds)
    {
        foreach (var i in tree.Query(bounds)) yield return segments[i];
    }

    private static Bounds[] BoundsOf(Segment[] segments)
    {
        var bounds = new Bounds[segments.Length];
        for (var i = 0; i < bounds.Length; i++) bounds[i] = segments[i].Bounds;
        return bounds;
    }

    private static bool IsBeyond(in Bounds box, Vec2 p, double limit)
    {
        var x = Math.Max(0, Math.Max(box.MinX - p.X, p.X - box.MaxX));
        var y = Math.Max(0, Math.Max(box.MinY - p.Y, p.Y - box.MaxY));
        // A hair farther, for rounding.
        return x * x + y * y > limit * limit * (1 + 1e-12);
    }
}
