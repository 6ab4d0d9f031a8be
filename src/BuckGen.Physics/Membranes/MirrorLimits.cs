namespace BuckGen.Physics.Membranes;

/// <summary>
/// How far the nodes of a part of a sheet may go before they meet their own mirror images: up to the planes of symmetry.
/// </summary>
/// <remarks>A fold that forms next to such a plane has its other flank beyond it, where there are no triangles to meet.</remarks>
/// <param name="LowX">Least x, mm.</param>
/// <param name="HighX">Largest x, mm.</param>
/// <param name="LowY">Least y, mm.</param>
/// <param name="HighY">Largest y, mm.</param>
internal readonly record struct MirrorLimits(double LowX, double HighX, double LowY, double HighY)
{
    /// <summary>The limits that the planes of symmetry set; without such a plane, none.</summary>
    public static MirrorLimits Of(ClampedSheet sheet)
    {
        var (lowX, highX) = Between(NodeHold.X, i => sheet.Mesh.Nodes[i].X);
        var (lowY, highY) = Between(NodeHold.Y, i => sheet.Mesh.Nodes[i].Y);
        return new(lowX, highX, lowY, highY);

        (double Low, double High) Between(NodeHold hold, Func<int, double> coordinate)
        {
            var (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
            var all = Enumerable.Range(0, sheet.Holds.Length);
            var (least, most) = (all.Min(coordinate), all.Max(coordinate));
            foreach (var plane in all.Where(i => sheet.Holds[i] != NodeHold.Clamped && sheet.Holds[i].HasFlag(hold)).Select(coordinate))
            {
                if (plane - least < most - plane) low = plane;
                else high = plane;
            }
            return (low, high);
        }
    }
}
