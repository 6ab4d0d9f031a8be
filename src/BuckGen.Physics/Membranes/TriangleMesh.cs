using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>A corner-to-corner net of triangles in the plane: no node lies inside another triangle's side.</summary>
/// <param name="Nodes">The nodes, mm.</param>
/// <param name="Triangles">The triangles, each counter-clockwise.</param>
internal sealed record TriangleMesh(ImmutableArray<Vec2> Nodes, ImmutableArray<MeshTriangle> Triangles)
{
    /// <summary>Area, mm².</summary>
    public double Area => Triangles.Sum(AreaOf);

    /// <summary>Area of one triangle, mm².</summary>
    public double AreaOf(MeshTriangle t) => (Nodes[t.B] - Nodes[t.A]).Cross(Nodes[t.C] - Nodes[t.A]) / 2;

    /// <summary>The sides that belong to one triangle only, with the mesh to their left.</summary>
    /// <exception cref="ArgumentException">A side belongs to more than two triangles, or twice in the same direction.</exception>
    public ImmutableArray<MeshEdge> BoundaryEdges()
    {
        var edges = new HashSet<MeshEdge>();
        foreach (var t in Triangles)
        {
            foreach (var edge in t.Edges())
                if (!edges.Add(edge)) throw new ArgumentException($"Two triangles claim the side from node {edge.From} to node {edge.To}.");
        }
        return [.. edges.Where(s => !edges.Contains(s.Reversed))];
    }

    /// <exception cref="ArgumentException">A triangle is flat or clockwise, or names a node that isn't there.</exception>
    internal void Validate()
    {
        foreach (var t in Triangles)
        {
            foreach (var (node, _) in t.Edges())
                if (node < 0 || node >= Nodes.Length) throw new ArgumentException($"A triangle names node {node} of {Nodes.Length}.");
            if (!(AreaOf(t) > 0)) throw new ArgumentException(FormattableString.Invariant(
                $"The triangle of nodes {t.A}, {t.B}, {t.C} at {Nodes[t.A]} has the area {AreaOf(t)} mm²; it must be above 0."));
        }
    }
}
