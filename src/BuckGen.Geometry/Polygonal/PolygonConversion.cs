using NetTopologySuite.Geometries;
using Polygons = NetTopologySuite.Geometries.Geometry;

namespace BuckGen.Geometry.Polygonal;

/// <summary>Between regions of lines and arcs and the polygons of the geometry library.</summary>
internal static class PolygonConversion
{
    private static readonly GeometryFactory Factory = new();

    /// <summary>The region with its arcs cut into chords.</summary>
    public static Polygons ToGeometry(Region region, double chord) =>
        Factory.CreateMultiPolygon([.. region.Islands.Select(i =>
            Factory.CreatePolygon(Ring(i.Outer, chord), [.. i.Holes.Select(h => Ring(h, chord))]))]);

    /// <summary>The polygons with runs of short chords made arcs again.</summary>
    public static Region FromGeometry(Polygons geometry, double tolerance)
    {
        var loops = new List<Loop>();
        for (var i = 0; i < geometry.NumGeometries; i++)
        {
            if (geometry.GetGeometryN(i) is not Polygon { IsEmpty: false } polygon) continue;
            loops.Add(ToLoop(polygon.ExteriorRing, tolerance));
            loops.AddRange(polygon.InteriorRings.Select(r => ToLoop(r, tolerance)));
        }

        return Region.FromLoops(loops);
    }

    /// <summary>The corners of a loop with arcs cut into chords of at most the given error.</summary>
    public static List<Vec2> Flattened(Loop loop, double chord)
    {
        var points = new List<Vec2>();
        foreach (var segment in loop.Segments)
        {
            var count = 1;
            if (segment.IsArc)
            {
                var angle = 2 * Math.Acos(Math.Max(0, 1 - chord / segment.Radius));
                count = Math.Max(2, (int)Math.Ceiling(Math.Abs(segment.Sweep) / angle));
            }

            for (var i = 0; i < count; i++) points.Add(segment.PointAt((double)i / count));
        }

        return points;
    }

    private static LinearRing Ring(Loop loop, double chord)
    {
        var points = Flattened(loop, chord);
        return Factory.CreateLinearRing([.. points.Append(points[0]).Select(p => new Coordinate(p.X, p.Y))]);
    }

    private static Loop ToLoop(LineString ring, double tolerance)
    {
        var corners = ring.Coordinates.Skip(1).Select(c => new Vec2(c.X, c.Y)).ToList();
        // An overlay may leave corners a rounding apart; when the region is moved they coincide, and a side of no length has no
        // direction.
        var apart = corners
            .Where((c, i) => c.DistanceTo(corners[(i + corners.Count - 1) % corners.Count]) > Precision.MinPieceLength).ToList();
        return ArcRecovery.Recover(apart.Count < 3 ? corners : apart, tolerance);
    }
}
