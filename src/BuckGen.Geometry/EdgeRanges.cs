namespace BuckGen.Geometry;

/// <summary>
/// Many edges in boxes of two, four, eight and so on as they follow each other, to find the nearest without checking all.
/// </summary>
internal sealed class EdgeRanges
{
    /// <summary>Edges in the smallest box.</summary>
    private const int Few = 4;

    private readonly PlanEdge[] edges;
    private readonly Bounds[] boxes;
    private readonly int leaves;

    /// <param name="edges">The edges, neighbours beside each other.</param>
    /// <param name="bounds">The box of each.</param>
    public EdgeRanges(PlanEdge[] edges, Bounds[] bounds)
    {
        this.edges = edges;
        leaves = 1;
        while (leaves * Few < edges.Length) leaves *= 2;
        // Box 1 holds all; boxes 2n and 2n + 1 are the halves of box n.
        boxes = new Bounds[2 * leaves];
        Array.Fill(boxes, Bounds.Nothing);
        for (var i = 0; i < edges.Length; i++) boxes[leaves + i / Few] = boxes[leaves + i / Few].With(bounds[i]);
        for (var n = leaves - 1; n > 0; n--) boxes[n] = boxes[2 * n].With(boxes[2 * n + 1]);
    }

    /// <summary>
    /// The edges that are nearest to a point, those among them that are farther by rounding alone, in their order.
    /// </summary>
    /// <param name="p">The point.</param>
    /// <param name="found">Is emptied and filled with their numbers.</param>
    public void Nearest(Vec2 p, List<int> found)
    {
        var least = double.PositiveInfinity;
        Descend(1, p, ref least);
        found.Clear();
        Collect(1, p, least * (1 + 1e-9), found);
    }

    private void Descend(int box, Vec2 p, ref double min)
    {
        if (SquareTo(boxes[box], p) > min) return;
        if (box >= leaves)
        {
            var first = (box - leaves) * Few;
            for (var i = first; i < Math.Min(first + Few, edges.Length); i++) min = Math.Min(min, edges[i].SquareTo(p));
            return;
        }

        var (one, other) = (2 * box, 2 * box + 1);
        if (SquareTo(boxes[other], p) < SquareTo(boxes[one], p)) (one, other) = (other, one);
        Descend(one, p, ref min);
        Descend(other, p, ref min);
    }

    private void Collect(int box, Vec2 p, double max, List<int> found)
    {
        if (SquareTo(boxes[box], p) > max) return;
        if (box < leaves)
        {
            Collect(2 * box, p, max, found);
            Collect(2 * box + 1, p, max, found);
            return;
        }

        var first = (box - leaves) * Few;
        for (var i = first; i < Math.Min(first + Few, edges.Length); i++)
            if (edges[i].SquareTo(p) <= max) found.Add(i);
    }

    /// <summary>Square of the distance to a box, less what rounding may have taken from it; 0 inside.</summary>
    private static double SquareTo(Bounds box, Vec2 p)
    {
        var (x, y) = (Math.Max(0, Math.Max(box.MinX - p.X, p.X - box.MaxX)),
            Math.Max(0, Math.Max(box.MinY - p.Y, p.Y - box.MaxY)));
        return (x * x + y * y) * (1 - 1e-9) - 1e-12;
    }
}
