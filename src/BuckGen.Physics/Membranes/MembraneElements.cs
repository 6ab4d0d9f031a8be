using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>The triangles that can still stretch, one list a figure, padded to whole vectors.</summary>
internal sealed class MembraneElements
{
    public MembraneElements(ClampedSheet sheet)
    {
        var mesh = sheet.Mesh;
        Count = mesh.Triangles.Length;
        var padded = MembraneNodes.Padded(Count);
        (A, B, C) = (new int[padded], new int[padded], new int[padded]);
        (Metric11, Metric12, Metric22) = (new double[padded], new double[padded], new double[padded]);
        (InverseSquare, Volume) = (new double[padded], new double[padded]);
        for (var e = 0; e < Count; e++)
        {
            var (a, b, c) = mesh.Triangles[e];
            var (p, q) = (mesh.Nodes[b] - mesh.Nodes[a], mesh.Nodes[c] - mesh.Nodes[a]);
            var twice = p.Cross(q);
            (A[e], B[e], C[e]) = (a, b, c);
            InverseSquare[e] = 1 / (twice * twice);
            Metric11[e] = q.LengthSquared * InverseSquare[e];
            Metric12[e] = -p.Dot(q) * InverseSquare[e];
            Metric22[e] = p.LengthSquared * InverseSquare[e];
            Volume[e] = twice / 2 * sheet.Thickness;
        }
    }

    /// <summary>How many there are; what follows in the lists is padding, of no size.</summary>
    public int Count { get; private set; }

    /// <summary>Largest stretch of area of a triangle, as <see cref="ElementForces"/> last saw it.</summary>
    public double LargestStretch { get; set; }

    /// <summary>First node.</summary>
    public int[] A { get; }

    /// <summary>Second node.</summary>
    public int[] B { get; }

    /// <summary>Third node.</summary>
    public int[] C { get; }

    /// <summary>
    /// Inverse of the metric of the two sides from the first node before forming, 1/mm²: times the metric after forming it gives
    /// the sum of the squared stretches.
    /// </summary>
    public double[] Metric11 { get; }
    public double[] Metric12 { get; }
    public double[] Metric22 { get; }

    /// <summary>One over the square of twice the area before forming, 1/mm⁴.</summary>
    public double[] InverseSquare { get; }

    /// <summary>Volume of plastic, mm³.</summary>
    public double[] Volume { get; }

    /// <summary>
    /// Drops the triangles of which no node can move any more, in place and in order, and returns the volume of gas above them,
    /// mm³, down from z = 0.
    /// </summary>
    public double DropRigid(ReadOnlySpan<bool> movable, MembraneNodes nodes, Action<MeshTriangle> dropped)
    {
        var (kept, gas) = (0, 0.0);
        for (var e = 0; e < Count; e++)
        {
            var (a, b, c) = (A[e], B[e], C[e]);
            if (movable[a] || movable[b] || movable[c])
            {
                (A[kept], B[kept], C[kept]) = (a, b, c);
                (Metric11[kept], Metric12[kept], Metric22[kept]) = (Metric11[e], Metric12[e], Metric22[e]);
                (InverseSquare[kept], Volume[kept]) = (InverseSquare[e], Volume[e]);
                kept++;
            }
            else
            {
                var (p, q) = (new Vec2(nodes.X[b] - nodes.X[a], nodes.Y[b] - nodes.Y[a]), new Vec2(nodes.X[c] - nodes.X[a], nodes.Y[c] - nodes.Y[a]));
                dropped(new(a, b, c));
                gas -= p.Cross(q) * (nodes.Z[a] + nodes.Z[b] + nodes.Z[c]) / 6;
            }
        }
        Count = kept;
        for (var e = kept; e < MembraneNodes.Padded(kept); e++) A[e] = B[e] = C[e] = 0;
        return gas;
    }
}
