namespace BuckGen.Models.Meshing;

/// <summary>The edge of a plan as straight pieces that meet those of all other plans of the solid only at their ends.</summary>
internal sealed class Contour
{
    private readonly HashSet<GridPoint> corners;
    private readonly Dictionary<(GridPoint, GridPoint), bool> directions;

    /// <param name="pieces">Pieces with the plan on their left. Those that run to and fro between the same points cancel out.</param>
    public Contour(IEnumerable<(GridPoint From, GridPoint To)> pieces)
    {
        var turns = new Dictionary<(GridPoint, GridPoint), int>();
        foreach (var (from, to) in pieces)
        {
            var (key, forward) = Key(from, to);
            turns[key] = turns.GetValueOrDefault(key) + (forward ? 1 : -1);
        }

        // Points in order, so that neither the start nor the direction of a drawing's loops shows in the mesh.
        directions = turns.Where(t => t.Value != 0).OrderBy(t => t.Key).ToDictionary(t => t.Key, t => t.Value > 0);
        Edges = [.. directions.Select(d => d.Value ? (d.Key.Item1, d.Key.Item2) : (d.Key.Item2, d.Key.Item1))];
        corners = [.. Edges.Select(e => e.From)];
    }

    /// <summary>The pieces, each once, with the plan on their left.</summary>
    public (GridPoint From, GridPoint To)[] Edges { get; }

    /// <summary>True when a piece ends at a point.</summary>
    public bool HasCorner(GridPoint point) => corners.Contains(point);

    /// <summary>True when the plan lies to the left of the way from one point to the next, false when to the right, null when this is no edge.</summary>
    public bool? IsOnLeft(GridPoint from, GridPoint to)
    {
        var (key, forward) = Key(from, to);
        return directions.TryGetValue(key, out var along) ? along == forward : null;
    }

    /// <summary>True when the middle between two points, which lies on no edge, is inside the plan.</summary>
    public bool ContainsMiddle(GridPoint a, GridPoint b)
    {
        // Everything doubled, so that the middle is a whole number and the answer exact.
        var (x, y) = ((long)a.X + b.X, (long)a.Y + b.Y);
        var inside = false;
        foreach (var (from, to) in Edges)
        {
            if (2L * from.Y > y == 2L * to.Y > y) continue;
            var side = ((Int128)(2L * to.X) - 2L * from.X) * (y - 2L * from.Y) - ((Int128)(2L * to.Y) - 2L * from.Y) * (x - 2L * from.X);
            if (to.Y > from.Y == side > 0) inside = !inside;
        }

        return inside;
    }

    private static ((GridPoint, GridPoint) Key, bool Forward) Key(GridPoint from, GridPoint to) =>
        from.CompareTo(to) < 0 ? ((from, to), true) : ((to, from), false);
}
