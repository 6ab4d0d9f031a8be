using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>A disc in rings: six triangles round the middle, each ring six nodes more. The middle is node 0.</summary>
internal static class DiscMesh
{
    public static TriangleMesh Create(double radius, int rings)
    {
        var (nodes, triangles) = (new List<Vec2> { new(0, 0) }, new List<MeshTriangle>());
        for (var ring = 1; ring <= rings; ring++)
            for (var i = 0; i < 6 * ring; i++) nodes.Add(new Vec2(radius * ring / rings, 0).Turned(Math.PI * i / (3 * ring)));
        for (var ring = 1; ring <= rings; ring++)
        {
            for (var i = 0; i < 6 * ring; i++)
            {
                var (sixth, along) = (i / ring, i % ring);
                var inner = sixth * (ring - 1) + along;
                triangles.Add(new(Node(ring - 1, inner), Node(ring, i), Node(ring, i + 1)));
                if (along < ring - 1) triangles.Add(new(Node(ring - 1, inner), Node(ring, i + 1), Node(ring - 1, inner + 1)));
            }
        }
        return new([.. nodes], [.. triangles]);
    }

    private static int Node(int ring, int i) => ring == 0 ? 0 : 1 + 3 * ring * (ring - 1) + i % (6 * ring);
}
