namespace BuckGen.Physics.Membranes;

/// <summary>
/// How far the nodes of a part of a sheet may go before they meet their own mirror images: up to the planes of symmetry.
/// </summary>
/// <remarks>A fold that forms next to such a plane has its other flank beyond it, where there are no triangles to meet.</remarks>
/// <param name="MinX">Least x, mm.</param>
/// <param name="MaxX">Largest x, mm.</param>
/// <param name="MinY">Least y, mm.</param>
/// <param name="MaxY">Largest y, mm.</param>
internal readonly record struct SymmetryLimits(double MinX, double MaxX, double MinY, double MaxY)
{
    /// <summary>The limits that the planes of symmetry set; without such a plane, none.</summary>
    public static SymmetryLimits FromSheet(ClampedSheet sheet)
    {
        var (minX, maxX) = LimitsAlong(BoundaryCondition.FixedX, i => sheet.Mesh.Nodes[i].X);
        var (minY, maxY) = LimitsAlong(BoundaryCondition.FixedY, i => sheet.Mesh.Nodes[i].Y);
        return new(minX, maxX, minY, maxY);

        (double Min, double Max) LimitsAlong(BoundaryCondition boundaryCondition, Func<int, double> coordinate)
        {
            var (min, max) = (double.NegativeInfinity, double.PositiveInfinity);
            var all = Enumerable.Range(0, sheet.BoundaryConditions.Length);
            var (meshMin, meshMax) = (all.Min(coordinate), all.Max(coordinate));
            foreach (var plane in all.Where(i => sheet.BoundaryConditions[i] != BoundaryCondition.Clamped && sheet.BoundaryConditions[i].HasFlag(boundaryCondition)).Select(coordinate))
            {
                if (plane - meshMin < meshMax - plane) min = plane;
                else max = plane;
            }
            return (min, max);
        }
    }
}
