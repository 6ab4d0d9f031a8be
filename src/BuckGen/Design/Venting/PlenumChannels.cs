using BuckGen.Geometry;
using BuckGen.Geometry.Polygonal;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;

namespace BuckGen.Design.Venting;

/// <summary>A plate in which channels join every bore to the port.</summary>
internal static class PlenumChannels
{
    /// <summary>The plate with the channels cut out.</summary>
    /// <param name="plate">The plate.</param>
    /// <param name="bores">Centres of the bores above it.</param>
    /// <param name="port">Where the air goes.</param>
    /// <param name="width">Width of the channels, mm.</param>
    /// <param name="portDiameter">Diameter of the opening at the port, mm.</param>
    /// <param name="chord">Maximum distance, mm, between the channels' round ends and the arcs that replace them.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static Region Cut(Region plate, IReadOnlyList<Vec2> bores, Vec2 port, double width, double portDiameter, double chord,
        CancellationToken cancellation)
    {
        var factory = new GeometryFactory();
        var ways = MinimumSpanningTree([port, .. bores], cancellation)
            .Select(w => factory.CreateLineString([ToCoordinate(w.From), ToCoordinate(w.To)]));
        var quarter = (int)Math.Ceiling(Math.PI / 4 / Math.Acos(1 - chord / Math.Max(width, portDiameter)));
        var channels = OverlayNGRobust.Union(
        [
            .. ways.Select(w => w.Buffer(width / 2, quarter)),
            factory.CreatePoint(ToCoordinate(port)).Buffer(portDiameter / 2, quarter),
        ]);
        var wood = OverlayNGRobust
            .Overlay(PolygonConversion.ToGeometry(plate, chord), channels,
                NetTopologySuite.Operation.Overlay.SpatialFunction.Difference);
        return PolygonConversion.FromGeometry(wood, chord);
    }

    /// <summary>The shortest set of straight ways that joins all points (Prim's algorithm).</summary>
    private static IEnumerable<(Vec2 From, Vec2 To)> MinimumSpanningTree(IReadOnlyList<Vec2> points,
        CancellationToken cancellation)
    {
        var nearest = new int[points.Count];
        var away = points.Select(p => p.DistanceTo(points[0])).ToArray();
        List<int> apart = [.. Enumerable.Range(1, points.Count - 1)];
        while (apart.Count > 0)
        {
            cancellation.ThrowIfCancellationRequested();
            var next = apart.MinBy(i => away[i]);
            apart.Remove(next);
            yield return (points[nearest[next]], points[next]);
            foreach (var i in apart)
                if (points[i].DistanceTo(points[next]) is var distance && distance < away[i])
                    (nearest[i], away[i]) = (next, distance);
        }
    }

    private static Coordinate ToCoordinate(Vec2 p) => new(p.X, p.Y);
}
