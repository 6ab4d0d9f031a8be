using BuckGen.Geometry;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;

namespace BuckGen.Tests.Intake.Measuring;

/// <summary>
/// The edge of a region as points, and narrow places found among all pairs of them: slow and plain. Sides are distinguished by
/// NetTopologySuite's point location in the polygon of the same points, none of the product's own.
/// </summary>
internal sealed class SampledEdge
{
    private static readonly GeometryFactory Factory = new();
    private readonly List<Vec2[]> loops;
    private readonly Vec2[] points;
    private readonly IndexedPointInAreaLocator inside;

    /// <param name="region">The region.</param>
    /// <param name="count">About how many points.</param>
    public SampledEdge(Region region, int count)
    {
        Step = region.Perimeter / count;
        loops = [.. region.Loops.Select(l => l.Segments.SelectMany(s =>
        {
            var parts = (int)Math.Ceiling(s.Length / Step);
            return Enumerable.Range(0, parts).Select(i => s.PointAt((double)i / parts));
        }).ToArray())];
        points = [.. loops.SelectMany(l => l)];
        Parts = [.. region.Islands
            .Select(i => (NetTopologySuite.Geometries.Geometry)Factory.CreatePolygon(Ring(i.Outer), [.. i.Holes.Select(Ring)]))];
        inside = new(Factory.CreateMultiPolygon([.. Parts.Cast<Polygon>()]));
    }

    /// <summary>The largest distance along the edge between neighbouring points, mm.</summary>
    public double Step { get; }

    /// <summary>Each part with its holes; arcs as chords within 0.001 mm.</summary>
    public NetTopologySuite.Geometries.Geometry[] Parts { get; }

    /// <summary>True for a point of the region.</summary>
    public bool IsWood(Vec2 p) => inside.Locate(new(p.X, p.Y)) == Location.Interior;

    /// <summary>Distance from a place to the nearest of the points.</summary>
    public double DistanceTo(Vec2 p) => points.Min(q => q.DistanceTo(p));

    /// <summary>
    /// The narrowest pair of points, from a least width to a limit, whose circle holds no other point; null when none is.
    /// </summary>
    /// <param name="wood">On which side of the edge.</param>
    /// <param name="min">Narrower pairs are left out: there the points lie too far apart to tell.</param>
    /// <param name="limit">Wider pairs are left out.</param>
    /// <param name="slack">By how much of its radius the circle may be entered.</param>
    public (Vec2 A, Vec2 B)? Narrowest(bool wood, double min, double limit, double slack)
    {
        (Vec2 A, Vec2 B)? best = null;
        for (var i = 0; i < points.Length; i++)
            for (var j = i + 1; j < points.Length; j++)
            {
                var width = points[i].DistanceTo(points[j]);
                if (width < min || width >= limit) continue;
                var (middle, clear) = (points[i].MidpointTo(points[j]), width / 2 * (1 - slack));
                if (Enters(i - 1) || Enters(i + 1) || Enters(j - 1) || Enters(j + 1)) continue;
                if (points.Any(p => (p - middle).LengthSquared < clear * clear) || IsWood(middle) != wood) continue;
                (best, limit) = ((points[i], points[j]), width);

                bool Enters(int k) => (points[(k + points.Length) % points.Length] - middle).LengthSquared < clear * clear;
            }

        return best;
    }

    private static LinearRing Ring(Loop loop)
    {
        var ring = loop.Segments.SelectMany(s =>
        {
            var parts = s.IsArc
                ? Math.Max(8, (int)Math.Ceiling(Math.Abs(s.Sweep) / Math.Acos(Math.Max(0, 1 - 0.001 / s.Radius)) / 2)) : 1;
            return Enumerable.Range(0, parts).Select(i => s.PointAt((double)i / parts));
        }).Select(p => new Coordinate(p.X, p.Y)).ToList();
        return Factory.CreateLinearRing([.. ring, ring[0]]);
    }
}
