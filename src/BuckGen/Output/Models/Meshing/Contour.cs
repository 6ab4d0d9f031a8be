using NetTopologySuite.Geometries;
using NetTopologySuite.Index.HPRtree;

namespace BuckGen.Output.Models.Meshing;

/// <summary>The edge of a plan as straight pieces that meet those of all other plans of the solid only at their ends.</summary>
internal sealed class Contour
{
    private readonly HashSet<GridPoint> corners;
    private readonly Dictionary<(GridPoint, GridPoint), bool> leftSides;
    private readonly HPRtree<(GridPoint From, GridPoint To)> tree = new();
    private readonly double farRight;

    /// <param name="pieces">
    /// Pieces of closed ways, in either direction. The even-odd rule alone decides what lies inside, so that neither an edge
    /// walked twice nor a knot smaller than an offset's tolerance leaves the plan without a clear inside.
    /// </param>
    public Contour(IEnumerable<(GridPoint From, GridPoint To)> pieces)
    {
        var odd = new HashSet<(GridPoint From, GridPoint To)>();
        foreach (var (from, to) in pieces)
        {
            var piece = from.CompareTo(to) < 0 ? (from, to) : (to, from);
            if (!odd.Remove(piece)) odd.Add(piece);
        }

        corners = [.. odd.SelectMany(p => (GridPoint[])[p.From, p.To])];
        farRight = corners.Select(c => c.X).DefaultIfEmpty().Max();
        foreach (var (from, to) in odd) tree.Insert(new(from.ToCoordinate(), to.ToCoordinate()), (from, to));
        tree.Build();
        // In order, so that neither the start nor the direction of a drawing's loops shows in the mesh.
        leftSides = odd.Order().ToDictionary(p => p, p => IsUpward(p.From, p.To) != IsInsideBeyond(p.From, p.To));
        Edges = [.. leftSides.Select(p => p.Value ? p.Key : (p.Key.Item2, p.Key.Item1))];
    }

    /// <summary>The pieces, each once, with the plan on their left.</summary>
    public (GridPoint From, GridPoint To)[] Edges { get; }

    /// <summary>True when a piece ends at a point.</summary>
    public bool HasCorner(GridPoint point) => corners.Contains(point);

    /// <summary>
    /// True when the plan lies to the left of the way from one point to the next, false when to the right, null when this is no
    /// edge.
    /// </summary>
    public bool? IsOnLeft(GridPoint from, GridPoint to)
    {
        var forward = from.CompareTo(to) < 0;
        return leftSides.TryGetValue(forward ? (from, to) : (to, from), out var left) ? left == forward : null;
    }

    /// <summary>True when the middle between two points, which lies on no edge, is inside the plan.</summary>
    public bool ContainsMiddle(GridPoint a, GridPoint b) => IsInsideBeyond(a, b);

    /// <summary>True when the plan lies just to the right of the middle between two points.</summary>
    private bool IsInsideBeyond(GridPoint a, GridPoint b)
    {
        // Everything doubled, so that the middle is a whole number and the answer exact.
        var (x, y) = ((long)a.X + b.X, (long)a.Y + b.Y);
        var inside = false;
        foreach (var (from, to) in tree.Query(new Envelope(x / 2.0, farRight, y / 2.0, y / 2.0)))
        {
            if (IsAbove(from) == IsAbove(to)) continue;
            var side = (Int128)(2L * to.X - 2L * from.X) * (y - 2L * from.Y) - (Int128)(2L * to.Y - 2L * from.Y)
                * (x - 2L * from.X);
            // The edge whose own middle it is does not count.
            if (side != 0 && IsUpward(from, to) == side > 0) inside = !inside;
        }

        return inside;

        // The way to the right sinks by less than anything, so that it never runs along a level edge nor through a corner.
        bool IsAbove(GridPoint p) => 2L * p.Y != y ? 2L * p.Y > y : 2L * p.X > x;
    }

    private static bool IsUpward(GridPoint from, GridPoint to) => from.Y != to.Y ? from.Y < to.Y : from.X < to.X;
}
