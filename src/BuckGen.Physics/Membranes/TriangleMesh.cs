using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>A conforming mesh of triangles in the plane: no node lies inside an edge of another triangle.</summary>
/// <param name="Nodes">The nodes, mm.</param>
/// <param name="Triangles">The triangles, each counter-clockwise.</param>
public sealed record TriangleMesh(ImmutableArray<Vec2> Nodes, ImmutableArray<MeshTriangle> Triangles)
{
    /// <summary>Area, mm².</summary>
    public double Area => Triangles.Sum(AreaOf);

    /// <summary>Area of a triangle, mm²; negative when it is clockwise.</summary>
    /// <param name="t">The triangle.</param>
    public double AreaOf(MeshTriangle t) => (Nodes[t.B] - Nodes[t.A]).Cross(Nodes[t.C] - Nodes[t.A]) / 2;

    /// <summary>The edges that belong to one triangle only, with the mesh to their left.</summary>
    /// <exception cref="ArgumentException">An edge belongs to more than two triangles, or to two in the same
    /// direction.</exception>
    public ImmutableArray<MeshEdge> BoundaryEdges()
    {
        var edges = new HashSet<MeshEdge>();
        foreach (var t in Triangles)
        {
            foreach (var edge in t.Edges())
                if (!edges.Add(edge))
                    throw new ArgumentException($"Two triangles claim the edge from node {edge.From} to node {edge.To}.");
        }
        return [.. edges.Where(s => !edges.Contains(s.Reversed))];
    }

    /// <exception cref="ArgumentException">A triangle is flat or clockwise, or names a node that isn't there.</exception>
    internal void Validate()
    {
        if (Nodes.IsDefaultOrEmpty || Triangles.IsDefaultOrEmpty) throw new ArgumentException("The mesh has no triangles.");
        foreach (var t in Triangles)
        {
            foreach (var (node, _) in t.Edges())
                if (node < 0 || node >= Nodes.Length)
                    throw new ArgumentException($"A triangle names node {node} of {Nodes.Length}.");
            if (!(AreaOf(t) > 0)) throw new ArgumentException(FormattableString.Invariant(
                $"The triangle of nodes {t.A}, {t.B}, {t.C} at {Nodes[t.A]} has the area {AreaOf(t)} mm²; it must be above 0."));
        }
    }
}
