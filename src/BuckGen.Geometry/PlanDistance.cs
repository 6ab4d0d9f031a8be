using System.Runtime.InteropServices;

namespace BuckGen.Geometry;

/// <summary>How far any point of the plan is from the edge of a region, fast enough for a million queries.</summary>
/// <remarks>
/// The plan is cut into squares and those again into four, until few pieces of the edge can be the nearest to a point of a
/// square. With h the distance from a square's middle to its corner, only those at most 2·h farther from the middle than the
/// nearest one. Of very many pieces too many are left everywhere, so that the squares would cost more than they save; then boxes
/// of neighbours serve.
/// </remarks>
internal sealed class PlanDistance
{
    private const int FewEdges = 6, MaxDepth = 8, ManyEdges = 600;

    private readonly Region region;
    private readonly PlanEdge[] edges;
    private readonly int[] all;
    private readonly Vec2 centre;
    private readonly double half;
    private readonly Square? root;
    private readonly EdgeRanges? ranges;

    /// <param name="region">The region, not empty.</param>
    /// <param name="around">Where the queries lie; elsewhere they take longer.</param>
    /// <exception cref="ArgumentException">The region is empty.</exception>
    public PlanDistance(Region region, Bounds around)
    {
        this.region = region;
        if (region.IsEmpty) throw new ArgumentException("Nothing is at a distance from an empty region.", nameof(region));
        var whole = around.With(region.Bounds);
        (centre, half) = (whole.Centre, Math.Max(whole.Width, whole.Height) / 2);
        edges = [.. region.Loops.SelectMany(EdgesOf)];
        all = [.. Enumerable.Range(0, edges.Length)];
        if (edges.Length > ManyEdges) ranges = new(edges, [.. region.Segments.Select(s => s.Bounds)]);
        else root = Square.Build(edges, all, centre, half, MaxDepth);
    }

    /// <summary>Distance of a point from the edge, mm; negative inside the region.</summary>
    public double At(Vec2 p)
    {
        if (root is null)
        {
            var found = new List<int>();
            ranges!.Nearest(p, found);
            return Nearest(CollectionsMarshal.AsSpan(found), p);
        }

        var (square, middle, side) = (root, centre, half);
        if (Math.Abs(p.X - middle.X) > side || Math.Abs(p.Y - middle.Y) > side) return Nearest(all, p);
        while (square.Quarters is { } quarters)
        {
            var (right, upper) = (p.X >= middle.X, p.Y >= middle.Y);
            side /= 2;
            middle += new Vec2(right ? side : -side, upper ? side : -side);
            square = quarters[(right ? 1 : 0) + (upper ? 2 : 0)];
        }
        return Nearest(square.Edges, p);
    }

    private double Nearest(ReadOnlySpan<int> candidates, Vec2 p)
    {
        var (nearest, least) = (-1, double.PositiveInfinity);
        foreach (var i in candidates)
        {
            var square = edges[i].SquareTo(p);
            if (square < least) (nearest, least) = (i, square);
        }
        var distance = edges[nearest].SignedTo(p);
        // Where two pieces of wood or two holes touch, the nearest edge is there twice, once for each side.
        foreach (var i in candidates)
            if (i != nearest && edges[i].SquareTo(p) <= least * (1 + 1e-9) && edges[i].SignedTo(p) < 0 != distance < 0)
                return region.Contains(p) ? -Math.Sqrt(least) : Math.Sqrt(least);
        return distance;
    }

    private static IEnumerable<PlanEdge> EdgesOf(Loop loop)
    {
        var pieces = loop.Segments;
        return pieces.Select((piece, i) =>
            new PlanEdge(piece, pieces[(i + pieces.Length - 1) % pieces.Length], pieces[(i + 1) % pieces.Length]));
    }

    /// <summary>A square with the pieces that can be nearest in it, or its quarters.</summary>
    private sealed record Square(int[] Edges, Square[]? Quarters)
    {
        public static Square Build(PlanEdge[] edges, int[] candidates, Vec2 centre, double half, int depth)
        {
            var distances = Array.ConvertAll(candidates, i => Math.Sqrt(edges[i].SquareTo(centre)));
            var limit = distances.Min() + 2 * Math.Sqrt(2) * half * (1 + 1e-9);
            int[] near = [.. candidates.Where((_, k) => distances[k] <= limit)];
            if (near.Length <= FewEdges || depth == 0) return new(near, null);
            var quarter = half / 2;
            return new(near,
            [
                .. from upper in (double[])[-quarter, quarter]
                   from right in (double[])[-quarter, quarter]
                   select Build(edges, near, centre + new Vec2(right, upper), quarter, depth - 1),
            ]);
        }
    }
}
