namespace BuckGen.Geometry;

/// <summary>
/// The middle of edges: their centre of gravity, which turns with them and does not depend on where or which way they are drawn.
/// </summary>
internal static class EdgeCentroid
{
    /// <summary>The middle of all loops together.</summary>
    public static Vec2 Compute(IEnumerable<Loop> loops)
    {
        var (sum, length) = (new Vec2(0, 0), 0.0);
        foreach (var piece in loops.SelectMany(l => l.Segments))
        {
            sum += Compute(piece) * piece.Length;
            length += piece.Length;
        }

        return sum * (1 / length);
    }

    private static Vec2 Compute(Segment piece)
    {
        var middle = piece.PointAt(0.5);
        if (!piece.IsArc) return middle;
        var half = Math.Abs(piece.Sweep) / 2;
        // The centre of gravity of an arc lies at radius·sin(h)/h from its centre (geometry).
        return middle + (piece.Centre - middle) * (1 - Math.Sin(half) / half);
    }
}
