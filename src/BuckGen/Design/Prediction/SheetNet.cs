using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>The net of triangles that models the sheet: finer where walls rise.</summary>
internal static class SheetNet
{
    /// <summary>Finest and coarsest triangles: how much larger the ones far from any wall may be.</summary>
    private const double Coarsening = 4;

    /// <summary>By how much triangles grow with the distance from the next wall.</summary>
    private const double Growth = 0.35;

    /// <summary>A net of at most the given number of triangles, and the longest side of those at the walls, mm.</summary>
    /// <param name="opening">The sheet inside the frame.</param>
    /// <param name="edges">Outlines of what rises; none of them empty.</param>
    /// <param name="most">Most triangles.</param>
    public static (TriangleMesh Mesh, double Finest) Of(Bounds opening, IReadOnlyList<PlanDistance> edges, int most)
    {
        // Begun with the size of an even net, coarser until it fits.
        for (var finest = Math.Sqrt(opening.Width * opening.Height / most); ; finest *= 1.15)
        {
            var size = finest;
            var mesh = Bisection.Refine(FrameMesh.Of(opening, Coarsening * finest), p => SizeAt(p, size));
            if (mesh.Triangles.Length <= most) return (mesh, finest);
        }

        double SizeAt(Vec2 p, double finest) => Math.Clamp(finest + Growth * (edges.Min(e => Math.Abs(e.At(p))) - 2 * finest), finest, Coarsening * finest);
    }
}
