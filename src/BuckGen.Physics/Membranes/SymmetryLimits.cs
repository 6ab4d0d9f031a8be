namespace BuckGen.Physics.Membranes;

/// <summary>
/// How far the nodes of a part of a sheet may move before they touch their mirror images: up to the planes of symmetry.
/// </summary>
/// <remarks>The second flank of a fold at such a plane lies beyond it, where there are no elements to touch.</remarks>
/// <param name="MinX">Smallest x, mm.</param>
/// <param name="MaxX">Largest x, mm.</param>
/// <param name="MinY">Smallest y, mm.</param>
/// <param name="MaxY">Largest y, mm.</param>
internal readonly record struct SymmetryLimits(double MinX, double MaxX, double MinY, double MaxY)
{
    /// <summary>The limits given by the planes of symmetry; infinite where there is none.</summary>
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
            foreach (var plane in all.Where(i => sheet.BoundaryConditions[i] != BoundaryCondition.Clamped
                && sheet.BoundaryConditions[i].HasFlag(boundaryCondition)).Select(coordinate))
            {
                if (plane - meshMin < meshMax - plane) min = plane;
                else max = plane;
            }
            return (min, max);
        }
    }
}
