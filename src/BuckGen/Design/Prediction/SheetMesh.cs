using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>The net of triangles that models the sheet: finer where walls rise.</summary>
internal static class SheetMesh
{
    /// <summary>Finest and coarsest triangles: how much larger the ones far from any wall may be.</summary>
    private const double MaxCoarsening = 4;

    /// <summary>By how much triangles grow with the distance from the next wall.</summary>
    private const double GrowthRate = 0.35;

    /// <summary>A net of at most the given number of triangles, and the longest side of those at the walls, mm.</summary>
    /// <param name="opening">The sheet inside the frame.</param>
    /// <param name="edges">Outlines of what rises; none of them empty.</param>
    /// <param name="maxTriangles">Most triangles.</param>
    public static (TriangleMesh Mesh, double MinEdgeLength) Graded(Bounds opening, IReadOnlyList<PlanDistance> edges, int maxTriangles)
    {
        // Begun with the size of an even net, coarser until it fits.
        for (var minEdgeLength = Math.Sqrt(opening.Width * opening.Height / maxTriangles); ; minEdgeLength *= 1.15)
        {
            var size = minEdgeLength;
            var mesh = Bisection.Refine(FrameMesh.CrissCross(opening, MaxCoarsening * minEdgeLength), p => SizeAt(p, size));
            if (mesh.Triangles.Length <= maxTriangles) return (mesh, minEdgeLength);
        }

        double SizeAt(Vec2 p, double minEdgeLength) => Math.Clamp(minEdgeLength + GrowthRate * (edges.Min(e => Math.Abs(e.At(p))) - 2 * minEdgeLength), minEdgeLength, MaxCoarsening * minEdgeLength);
    }
}
