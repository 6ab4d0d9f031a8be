using System.Collections.Immutable;

namespace BuckGen.Geometry;

/// <summary>A triangle of a mesh, by the numbers of its corners, counter-clockwise seen from the side it faces.</summary>
/// <param name="A">First corner.</param>
/// <param name="B">Second corner.</param>
/// <param name="C">Third corner.</param>
public readonly record struct MeshTriangle(int A, int B, int C)
{
    /// <summary>The three edges in order: from the first corner to the second, to the third and back.</summary>
    public ImmutableArray<MeshEdge> Edges() => [new(A, B), new(B, C), new(C, A)];
}

/// <summary>A directed edge of a mesh, by the numbers of its ends.</summary>
/// <param name="From">The corner where it begins.</param>
/// <param name="To">The corner where it ends.</param>
public readonly record struct MeshEdge(int From, int To)
{
    /// <summary>The same edge in the other direction.</summary>
    public MeshEdge Reversed => new(To, From);
}
