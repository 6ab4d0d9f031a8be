using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>The mesh of the sheet: finer where walls rise.</summary>
internal static class SheetMesh
{
    /// <summary>Largest ratio of the size of triangles far from any wall to that of the finest.</summary>
    private const double MaxCoarsening = 4;

    /// <summary>Growth of the triangles with the distance from the nearest wall.</summary>
    private const double GrowthRate = 0.35;

    /// <summary>A mesh of at most the given number of triangles, and the longest edge of those at the walls, mm.</summary>
    /// <param name="opening">The sheet inside the frame.</param>
    /// <param name="edges">Outlines of what rises; none of them empty.</param>
    /// <param name="maxTriangles">Largest number of triangles.</param>
    public static (TriangleMesh Mesh, double MinEdgeLength) Graded(
        Bounds opening, IReadOnlyList<PlanDistance> edges, int maxTriangles)
    {
        // Starts with the size of a uniform mesh and coarsens until the number fits.
        for (var minEdgeLength = Math.Sqrt(opening.Width * opening.Height / maxTriangles); ; minEdgeLength *= 1.15)
        {
            var size = minEdgeLength;
            var mesh = Bisection.Refine(FrameMesh.CrissCross(opening, MaxCoarsening * minEdgeLength), p => SizeAt(p, size));
            if (mesh.Triangles.Length <= maxTriangles) return (mesh, minEdgeLength);
        }

        double SizeAt(Vec2 p, double minEdgeLength)
        {
            var size = minEdgeLength + GrowthRate * (edges.Min(e => Math.Abs(e.At(p))) - 2 * minEdgeLength);
            return Math.Clamp(size, minEdgeLength, MaxCoarsening * minEdgeLength);
        }
    }
}
