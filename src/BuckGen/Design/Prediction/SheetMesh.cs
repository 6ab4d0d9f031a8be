using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>The mesh of the sheet: finer where walls rise, and finest where the sheet is drawn into a narrow gap.</summary>
/// <param name="opening">The sheet inside the frame.</param>
/// <param name="edges">Outlines of what rises; none of them empty.</param>
/// <param name="gaps">Widths of the gaps.</param>
/// <param name="minSize">Smallest triangles, mm: as large as the sheet is thick, for a membrane has no finer shape.</param>
internal sealed class SheetMesh(Bounds opening, IReadOnlyList<PlanDistance> edges, GapWidth gaps, double minSize)
{
    /// <summary>Largest ratio of the size of triangles far from any wall to that at the walls.</summary>
    private const double MaxCoarsening = 4;

    /// <summary>Growth of the triangles with the distance from the nearest wall.</summary>
    private const double GrowthRate = 0.35;

    /// <summary>Ratio by which the triangles at the walls grow until their number fits.</summary>
    private const double SearchStep = 1.15;

    /// <summary>A mesh of a given fineness.</summary>
    public GradedMesh Create(MeshFineness fineness)
    {
        // Starts with the size of a uniform mesh and coarsens until the number fits, the gaps left aside.
        var atWalls = Math.Sqrt(opening.Width * opening.Height / fineness.TrianglesAtWalls);
        while (Refined(atWalls, p => FromWalls(p, atWalls)).Triangles.Length > fineness.TrianglesAtWalls) atWalls *= SearchStep;
        for (var across = fineness.TrianglesAcrossGap; ; across /= SearchStep)
        {
            var sizes = new MeshSizes(gaps, atWalls, across, minSize);
            var mesh = Refined(atWalls, p => Math.Min(FromWalls(p, atWalls), sizes.InGap(p)));
            if (mesh.Triangles.Length <= fineness.MaxTriangles || across < 1) return new(mesh, sizes);
        }
    }

    private TriangleMesh Refined(double atWalls, Func<Vec2, double> size) =>
        Bisection.Refine(FrameMesh.CrissCross(opening, MaxCoarsening * atWalls), size);

    private double FromWalls(Vec2 p, double atWalls)
    {
        var size = atWalls + GrowthRate * (edges.Min(e => Math.Abs(e.At(p))) - 2 * atWalls);
        return Math.Clamp(size, atWalls, MaxCoarsening * atWalls);
    }
}

/// <summary>How fine a mesh is.</summary>
/// <param name="TrianglesAtWalls">Largest number of triangles of the mesh before gaps are refined.</param>
/// <param name="TrianglesAcrossGap">Triangles side by side across a gap.</param>
/// <param name="MaxTriangles">Largest number of triangles in all; of too many, fewer lie across each gap.</param>
internal readonly record struct MeshFineness(int TrianglesAtWalls, double TrianglesAcrossGap, int MaxTriangles);

/// <summary>A mesh and the sizes of its triangles.</summary>
/// <param name="Mesh">The mesh.</param>
/// <param name="Sizes">The sizes.</param>
internal sealed record GradedMesh(TriangleMesh Mesh, MeshSizes Sizes);

/// <summary>The sizes of the triangles where the sheet meets walls, mm.</summary>
/// <param name="gaps">Widths of the gaps.</param>
/// <param name="atWalls">At walls with room before them.</param>
/// <param name="across">Triangles side by side across a gap.</param>
/// <param name="minSize">Smallest size.</param>
internal sealed class MeshSizes(GapWidth gaps, double atWalls, double across, double minSize)
{
    /// <summary>A ball enters a gap of four times its radius and more, so that it can touch its floor.</summary>
    private const double MinGapInBalls = 4;

    /// <summary>Number of triangles that a ball must span, so that its place is resolved.</summary>
    private const double MinTrianglesInBall = 2;

    /// <summary>Number of triangles across a gap without which the sheet in it is not judged.</summary>
    private const double MinAcross = 3;

    /// <summary>Width of a gap below which the sheet in it is not judged, mm.</summary>
    public double MinJudgedGap => across < MinAcross ? across * atWalls : MinAcross * minSize;

    /// <summary>At walls with room before them.</summary>
    public double AtWalls => atWalls;

    /// <summary>In a gap; infinite where there is none.</summary>
    public double InGap(Vec2 p) => Math.Max(minSize, gaps.At(p, across * atWalls) / across);

    /// <summary>
    /// Radius of the ball by which a thin place is judged, mm. In a gap it is the wanted one, but never larger than a quarter of
    /// the gap. Elsewhere it spans the triangles at the walls.
    /// </summary>
    /// <param name="p">The place in plan.</param>
    /// <param name="wanted">Wanted radius, mm.</param>
    public double Ball(Vec2 p, double wanted)
    {
        var gap = gaps.At(p, across * atWalls);
        return double.IsInfinity(gap) ? BallInTheOpen(wanted) : Math.Min(wanted, gap / MinGapInBalls);
    }

    /// <summary>Radius of the ball at walls with room before them, mm.</summary>
    /// <param name="wanted">Wanted radius, mm.</param>
    public double BallInTheOpen(double wanted) => Math.Max(wanted, MinTrianglesInBall * atWalls);
}
