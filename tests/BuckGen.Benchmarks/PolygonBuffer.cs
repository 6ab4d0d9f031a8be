using BuckGen.Geometry;
using NetTopologySuite.Geometries;

using NetTopologySuite.Operation.Buffer;

namespace BuckGen.Benchmarks;

/// <summary>
/// The peer: NetTopologySuite's own buffer of the same outline, one for each of ten layers and for nothing else.
/// </summary>
internal static class PolygonBuffer
{
    // 12 mm layers at 5°; arcs cut into as many chords as a chord error of 0.01 mm asks for.
    private static readonly double Step = 12 * Math.Tan(5 * Math.PI / 180);

    public static NetTopologySuite.Geometries.Geometry Polygon(Vec2[] points) =>
        new GeometryFactory().CreatePolygon([.. points.Append(points[0]).Select(p => new Coordinate(p.X, p.Y))]);

    public static double TenLayers(NetTopologySuite.Geometries.Geometry polygon)
    {
        var area = 0.0;
        for (var layer = 1; layer <= 10; layer++)
        {
            var distance = layer * Step;
            var quadrant = (int)Math.Ceiling(Math.PI / 4 / Math.Acos(1 - 0.01 / distance));
            area += polygon.Buffer(distance, new BufferParameters { QuadrantSegments = quadrant }).Area;
        }

        return area;
    }
}
