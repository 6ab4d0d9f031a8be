using BuckGen.Geometry;

namespace BuckGen.Intake.Healing;

/// <summary>The places where pieces end; ends at the same point share a node.</summary>
/// <param name="From">For each piece the node it starts from.</param>
/// <param name="To">For each piece the node it leads to.</param>
/// <param name="Places">Where each node lies.</param>
internal sealed record EndNodes(int[] From, int[] To, Vec2[] Places)
{
    public static EndNodes Find(IReadOnlyList<Piece> pieces, Tolerance tolerance, CancellationToken cancellation)
    {
        var grid = new PointGrid(tolerance.Coincident);
        var places = new List<Vec2>();
        var (from, to) = (new int[pieces.Count], new int[pieces.Count]);
        for (var i = 0; i < pieces.Count; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            (from[i], to[i]) = (NodeAt(pieces[i].Segment.Start), NodeAt(pieces[i].Segment.End));
        }

        return new(from, to, [.. places]);

        int NodeAt(Vec2 end)
        {
            var node = grid.Near(end).DefaultIfEmpty(-1).Min();
            if (node >= 0) return node;
            places.Add(end);
            grid.Add(end, places.Count - 1);
            return places.Count - 1;
        }
    }

    /// <summary>How many ends meet at each node; where the number is odd, one of them is open.</summary>
    public int[] Degrees()
    {
        var degrees = new int[Places.Length];
        foreach (var node in From.Concat(To)) degrees[node]++;
        return degrees;
    }
}
