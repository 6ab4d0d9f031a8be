using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Polygonize;
using NetTopologySuite.Triangulate.Polygon;

namespace BuckGen.Output.Models.Meshing;

/// <summary>A triangle of the plan, counter-clockwise.</summary>
/// <param name="A">First corner.</param>
/// <param name="B">Second corner.</param>
/// <param name="C">Third corner.</param>
/// <param name="FacesUp">True where only the lower plan has wood, so that one sees the face from above.</param>
internal readonly record struct PlanTriangle(GridPoint A, GridPoint B, GridPoint C, bool FacesUp);

/// <summary>
/// Where one of two plans has wood and the other has none, in triangles whose corners are those of the two contours.
/// </summary>
internal static class PlanDifference
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>The triangles.</summary>
    /// <param name="lower">The contour below.</param>
    /// <param name="upper">The contour above.</param>
    public static IEnumerable<PlanTriangle> Triangles(Contour lower, Contour upper)
    {
        if (ReferenceEquals(lower, upper)) yield break;
        // All edges, those of both plans too: only then is every face wholly inside or wholly outside each of them.
        var polygonizer = new Polygonizer();
        foreach (var (from, to) in lower.Edges) polygonizer.Add(Line(from, to));
        foreach (var (from, to) in upper.Edges)
            if (lower.IsOnLeft(from, to) is null) polygonizer.Add(Line(from, to));

        foreach (var face in polygonizer.GetPolygons().Cast<Polygon>())
        {
            var (inLower, inUpper) = (IsInside(face, lower), IsInside(face, upper));
            if (inLower == inUpper) continue;
            // The same triangles whichever way the loops were drawn.
            var result = new ConstrainedDelaunayTriangulator(face.Normalized()).GetResult();
            for (var i = 0; i < result.NumGeometries; i++)
            {
                var corners = result.GetGeometryN(i).Coordinates;
                var (a, b, c) = (GridPoint.FromCoordinate(corners[0]), GridPoint.FromCoordinate(corners[1]),
                    GridPoint.FromCoordinate(corners[2]));
                yield return Orientation.IsCCW(corners) ? new(a, b, c, inLower) : new(a, c, b, inLower);
            }
        }
    }

    /// <summary>True when a face, which no edge of the contour crosses, lies inside the contour.</summary>
    private static bool IsInside(Polygon face, Contour contour)
    {
        foreach (var ring in face.InteriorRings.Prepend(face.ExteriorRing))
        {
            var points = ring.Coordinates;
            var faceOnLeft = Orientation.IsCCW(points) == ReferenceEquals(ring, face.ExteriorRing);
            for (var i = 0; i + 1 < points.Length; i++)
                if (contour.IsOnLeft(GridPoint.FromCoordinate(points[i]), GridPoint.FromCoordinate(points[i + 1])) is { } left)
                    return left == faceOnLeft;
        }

        return contour.ContainsMiddle(GridPoint.FromCoordinate(face.ExteriorRing.GetCoordinateN(0)),
            GridPoint.FromCoordinate(face.ExteriorRing.GetCoordinateN(1)));
    }

    private static LineString Line(GridPoint from, GridPoint to) =>
        Factory.CreateLineString([from.ToCoordinate(), to.ToCoordinate()]);
}
