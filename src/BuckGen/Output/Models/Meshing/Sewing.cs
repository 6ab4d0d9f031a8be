using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Output.Models.Meshing;

/// <summary>Sews triangles together along their edges.</summary>
/// <remarks>
/// Corners become one only where a seam joins them. So an edge at which bodies touch, with four triangles on it, becomes two
/// edges. A point at which they touch becomes two points. The mesh is closed and without branches whatever the shape is.
/// </remarks>
internal static class Sewing
{
    /// <summary>The mesh.</summary>
    /// <param name="triangles">Triangles that leave no edge open.</param>
    /// <param name="place">Where a corner lies, mm.</param>
    /// <exception cref="InvalidOperationException">An edge stays open; the message says where.</exception>
    public static SolidMesh Sew(IEnumerable<SurfaceTriangle> triangles, Func<SurfacePoint, Vec3> place)
    {
        var sorted = WithoutLeaves(triangles.Select(Turned)).OrderBy(t => t.A).ThenBy(t => t.B).ThenBy(t => t.C).ToArray();
        // Corner number 3t + k is the k-th of triangle t, and edge 3t + k leads from it to the next.
        SurfacePoint[] corners = [.. sorted.SelectMany(t => (SurfacePoint[])[t.A, t.B, t.C])];
        var seams = Seams.Find(corners, place).ToArray();
        var joined = new DisjointSets(corners.Length);
        foreach (var (edge, other) in seams)
        {
            joined.Join(edge, Seams.Next(other));
            joined.Join(Seams.Next(edge), other);
        }

        var numbers = new Dictionary<int, int>();
        var points = ImmutableArray.CreateBuilder<Vec3>();
        int[] numbered = [.. Enumerable.Range(0, corners.Length).Select(Number)];
        return DuplicateEdges.Split(points.ToImmutable(), numbered, seams);

        int Number(int corner)
        {
            if (numbers.TryGetValue(joined.Find(corner), out var known)) return known;
            points.Add(place(corners[corner]));
            return numbers[joined.Find(corner)] = points.Count - 1;
        }
    }

    /// <summary>
    /// Without triangles that lie back to back: a piece that only one level has, with nothing of it below and above.
    /// </summary>
    private static HashSet<SurfaceTriangle> WithoutLeaves(IEnumerable<SurfaceTriangle> triangles)
    {
        var kept = new HashSet<SurfaceTriangle>();
        foreach (var triangle in triangles)
            if (!kept.Remove(new(triangle.A, triangle.C, triangle.B))) kept.Add(triangle);
        return kept;
    }

    /// <summary>
    /// The triangle from its lowest corner on, so that the order of the mesh does not depend on how it was made.
    /// </summary>
    private static SurfaceTriangle Turned(SurfaceTriangle t)
    {
        var ((a, b, c), least) = (t, MinPoint(t));
        return least == a ? t : least == b ? new(b, c, a) : new(c, a, b);
    }

    private static SurfacePoint MinPoint(SurfaceTriangle t)
    {
        var (a, b, c) = t;
        var least = a.CompareTo(b) < 0 ? a : b;
        return least.CompareTo(c) < 0 ? least : c;
    }
}
