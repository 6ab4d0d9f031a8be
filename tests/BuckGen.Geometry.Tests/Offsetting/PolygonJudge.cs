using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Buffer;
using NetTopologySuite.Operation.OverlayNG;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>Judges offsets with round corners by the buffers of NetTopologySuite 2.6, of outlines cut into fine chords.</summary>
internal static class PolygonJudge
{
    private const double ChordError = 1e-3;
    private static readonly GeometryFactory Factory = new();

    /// <summary>Area that only one of the two has: the offset and the library's buffer, mm².</summary>
    /// <param name="source">The region that was offset.</param>
    /// <param name="result">The offset.</param>
    /// <param name="distance">The distance, mm.</param>
    /// <param name="crosses">True for a region that crosses itself; the library's own fixer puts it right first.</param>
    public static double DifferingArea(Region source, Region result, double distance, bool crosses)
    {
        var segments =
            (int)Math.Clamp(Math.Ceiling(Math.PI / 4 / Math.Acos(1 - Math.Min(0.5, ChordError / Math.Abs(distance)))), 8, 500);
        var outline = crosses ? GeometryFixer.Fix(OfRegion(source)) : OfRegion(source);
        var buffer = outline.Buffer(distance, new BufferParameters { QuadrantSegments = segments, SimplifyFactor = 1e-4 });
        return OverlayNGRobust.Overlay(buffer, OfRegion(result),
            NetTopologySuite.Operation.Overlay.SpatialFunction.SymDifference).Area;
    }

    private static MultiPolygon OfRegion(Region region) => Factory.CreateMultiPolygon(
        [.. region.Islands.Select(i => Factory.CreatePolygon(Ring(i.Outer), [.. i.Holes.Select(Ring)]))]);

    private static LinearRing Ring(Loop loop)
    {
        var corners = new List<Coordinate>();
        foreach (var s in loop.Segments)
        {
            var count = s.IsArc ? (int)Math.Clamp(Math.Ceiling(Math.Abs(s.Sweep) / Math.Sqrt(8 * ChordError / s.Radius)), 1, 2000)
                : 1;
            for (var k = 0; k < count; k++) corners.Add(new(s.PointAt((double)k / count).X, s.PointAt((double)k / count).Y));
        }

        return Factory.CreateLinearRing([.. corners, corners[0].Copy()]);
    }
}
