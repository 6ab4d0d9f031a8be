using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>Refines a mesh where it is too coarse, without a node ever lying inside a neighbour's side.</summary>
/// <remarks>
/// Newest-vertex bisection (after W. F. Mitchell, ACM Trans. Math. Softw. 15 (1989) 326, from memory): each triangle is halved
/// across its first side, between the first two nodes, together with its neighbour there; if that side is not the neighbour's own
/// first one, the neighbour is halved first. The triangles stay similar to a few shapes, so none becomes a sliver. The mesh must
/// begin such that neighbours agree about their first sides, as those of <see cref="FrameMesh"/> do.
/// </remarks>
internal sealed class Bisection
{
    private readonly List<Vec2> nodes;
    private readonly List<MeshTriangle> triangles;
    private readonly Dictionary<MeshEdge, int> triangleOfEdge = [];

    private Bisection(TriangleMesh mesh)
    {
        (nodes, triangles) = ([.. mesh.Nodes], [.. mesh.Triangles]);
        for (var i = 0; i < triangles.Count; i++) IndexEdges(i);
    }

    /// <summary>Halves triangles until none has a first side longer than is wanted at its middle.</summary>
    /// <param name="mesh">The mesh, with first sides as described above.</param>
    /// <param name="maxEdgeLength">Longest side wanted at a place, mm, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wanted size needs more than two million triangles.</exception>
    public static TriangleMesh Refine(TriangleMesh mesh, Func<Vec2, double> maxEdgeLength)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(maxEdgeLength);
        var bisection = new Bisection(mesh);
        for (var i = 0; i < bisection.triangles.Count; i++)
        {
            // A halved triangle's place is taken by one of its halves, which is checked next.
            while (bisection.IsTooCoarse(i, maxEdgeLength)) bisection.Bisect(i);
            if (bisection.triangles.Count > 2_000_000) throw new ArgumentOutOfRangeException(
                nameof(maxEdgeLength), "The wanted size of the triangles makes more than 2 000 000 of them; use larger ones.");
        }
        return new([.. bisection.nodes], [.. bisection.triangles]);
    }

    private bool IsTooCoarse(int i, Func<Vec2, double> maxEdgeLength)
    {
        var (a, b, c) = triangles[i];
        // A little slack, so that rounding does not tell mirror images apart.
        return nodes[a].DistanceTo(nodes[b]) > maxEdgeLength((nodes[a] + nodes[b] + nodes[c]) * (1.0 / 3)) * (1 + 1e-9);
    }

    private void Bisect(int i)
    {
        var (a, b, _) = triangles[i];
        if (triangleOfEdge.TryGetValue(new(b, a), out var other) && (triangles[other].A, triangles[other].B) != (b, a)) Bisect(other);
        nodes.Add(nodes[a].MidpointTo(nodes[b]));
        SplitAt(i, nodes.Count - 1);
        if (triangleOfEdge.TryGetValue(new(b, a), out other)) SplitAt(other, nodes.Count - 1);
    }

    private void SplitAt(int i, int middle)
    {
        var (a, b, c) = triangles[i];
        triangleOfEdge.Remove(new(a, b));
        triangles[i] = new(c, a, middle);
        triangles.Add(new(b, c, middle));
        IndexEdges(i);
        IndexEdges(triangles.Count - 1);
    }

    private void IndexEdges(int i)
    {
        foreach (var edge in triangles[i].Edges()) triangleOfEdge[edge] = i;
    }
}
