using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// Refines a conforming mesh of triangles where it is too coarse and keeps it conforming: no node lies inside an edge of a
/// neighbour.
/// </summary>
/// <remarks>
/// Newest-vertex bisection (after W. F. Mitchell, ACM Trans. Math. Softw. 15 (1989) 326, from memory): each triangle is bisected
/// at its refinement edge, the one between its first two nodes, together with its neighbour there. If that edge is not the
/// refinement edge of the neighbour, the neighbour is bisected first. The triangles belong to a few similarity classes, so none
/// degenerates. In the initial mesh neighbours must agree about their refinement edges, as they do in those of
/// <see cref="FrameMesh"/>.
/// </remarks>
public sealed class Bisection
{
    private readonly List<Vec2> nodes;
    private readonly List<MeshTriangle> triangles;
    private readonly Dictionary<MeshEdge, int> triangleOfEdge = [];

    private Bisection(TriangleMesh mesh)
    {
        (nodes, triangles) = ([.. mesh.Nodes], [.. mesh.Triangles]);
        for (var i = 0; i < triangles.Count; i++) IndexEdges(i);
    }

    /// <summary>
    /// Bisects triangles until no refinement edge is longer than the size wanted at the centroid of its triangle.
    /// </summary>
    /// <param name="mesh">The initial mesh, with refinement edges as described above.</param>
    /// <param name="maxEdgeLength">Longest edge wanted at a point, mm, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wanted size needs more than two million triangles.</exception>
    public static TriangleMesh Refine(TriangleMesh mesh, Func<Vec2, double> maxEdgeLength)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(maxEdgeLength);
        var bisection = new Bisection(mesh);
        for (var i = 0; i < bisection.triangles.Count; i++)
        {
            // One half takes the place of the triangle in the list and is checked next.
            while (bisection.IsTooCoarse(i, maxEdgeLength))
            {
                bisection.Bisect(i);
                if (bisection.triangles.Count > 2_000_000) throw new ArgumentOutOfRangeException(
                    nameof(maxEdgeLength),
                    "The wanted size of the triangles makes more than 2 000 000 of them; use larger ones.");
            }
        }
        return new([.. bisection.nodes], [.. bisection.triangles]);
    }

    private bool IsTooCoarse(int i, Func<Vec2, double> maxEdgeLength)
    {
        var (a, b, c) = triangles[i];
        // A small tolerance, so that rounding does not break the symmetry of mirror images.
        return nodes[a].DistanceTo(nodes[b]) > maxEdgeLength((nodes[a] + nodes[b] + nodes[c]) * (1.0 / 3)) * (1 + 1e-9);
    }

    private void Bisect(int i)
    {
        var (a, b, _) = triangles[i];
        if (triangleOfEdge.TryGetValue(new(b, a), out var other) && (triangles[other].A, triangles[other].B) != (b, a))
            Bisect(other);
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
