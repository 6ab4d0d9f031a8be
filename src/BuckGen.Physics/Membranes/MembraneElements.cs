using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>The triangles that can still deform, as a structure of arrays, padded to whole vectors.</summary>
internal sealed class MembraneElements
{
    public MembraneElements(ClampedSheet sheet)
    {
        var mesh = sheet.Mesh;
        Count = mesh.Triangles.Length;
        var padded = MembraneNodes.PaddedCount(Count);
        (A, B, C) = (new int[padded], new int[padded], new int[padded]);
        (InverseMetric11, InverseMetric12, InverseMetric22) = (new double[padded], new double[padded], new double[padded]);
        (InverseMetricDeterminant, WeightedVolume) = (new double[padded], new double[padded]);
        for (var e = 0; e < Count; e++)
        {
            (A[e], B[e], C[e]) = mesh.Triangles[e];
            var (p, q) = sheet.EdgesBefore(mesh.Triangles[e]);
            InverseMetricDeterminant[e] = 1 / p.Cross(q).LengthSquared;
            InverseMetric11[e] = q.LengthSquared * InverseMetricDeterminant[e];
            InverseMetric12[e] = -p.Dot(q) * InverseMetricDeterminant[e];
            InverseMetric22[e] = p.LengthSquared * InverseMetricDeterminant[e];
            WeightedVolume[e] = mesh.AreaOf(mesh.Triangles[e]) * sheet.Thickness
                * (sheet.RelativeModulus.IsEmpty ? 1 : sheet.RelativeModulus[e]);
        }
    }

    /// <summary>Number of elements; what follows in the arrays is padding of zero volume.</summary>
    public int Count { get; private set; }

    /// <summary>Largest area stretch of an element in the last assembly by <see cref="ElementForces"/>.</summary>
    public double MaxAreaStretch { get; set; }

    /// <summary>First node.</summary>
    public int[] A { get; }

    /// <summary>Second node.</summary>
    public int[] B { get; }

    /// <summary>Third node.</summary>
    public int[] C { get; }

    /// <summary>
    /// Inverse of the metric of the two edges from the first node before forming, 1/mm²: contracted with the metric after forming
    /// it gives the sum of the squared principal stretches.
    /// </summary>
    public double[] InverseMetric11 { get; }
    public double[] InverseMetric12 { get; }
    public double[] InverseMetric22 { get; }

    /// <summary>Determinant of the inverse metric, 1/mm⁴: one over the square of twice the area before forming.</summary>
    public double[] InverseMetricDeterminant { get; }

    /// <summary>
    /// Volume of plastic of each element times its relative modulus, mm³: its energy is that of the material times this.
    /// </summary>
    public double[] WeightedVolume { get; }

    /// <summary>
    /// Removes the elements without a free node, in place and in order, and returns the volume of gas between z = 0 and them,
    /// mm³.
    /// </summary>
    public double RemoveFixed(ReadOnlySpan<bool> isFree, MembraneNodes nodes, Action<MeshTriangle> onRemoved)
    {
        var (kept, gasVolume) = (0, 0.0);
        for (var e = 0; e < Count; e++)
        {
            var (a, b, c) = (A[e], B[e], C[e]);
            if (isFree[a] || isFree[b] || isFree[c])
            {
                (A[kept], B[kept], C[kept]) = (a, b, c);
                (InverseMetric11[kept], InverseMetric12[kept], InverseMetric22[kept]) =
                    (InverseMetric11[e], InverseMetric12[e], InverseMetric22[e]);
                (InverseMetricDeterminant[kept], WeightedVolume[kept]) = (InverseMetricDeterminant[e], WeightedVolume[e]);
                kept++;
            }
            else
            {
                var p = new Vec2(nodes.X[b] - nodes.X[a], nodes.Y[b] - nodes.Y[a]);
                var q = new Vec2(nodes.X[c] - nodes.X[a], nodes.Y[c] - nodes.Y[a]);
                onRemoved(new(a, b, c));
                gasVolume -= p.Cross(q) * (nodes.Z[a] + nodes.Z[b] + nodes.Z[c]) / 6;
            }
        }
        Count = kept;
        for (var e = kept; e < MembraneNodes.PaddedCount(kept); e++) A[e] = B[e] = C[e] = 0;
        return gasVolume;
    }
}
