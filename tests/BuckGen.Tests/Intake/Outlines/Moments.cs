using BuckGen.Geometry;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>Measures of a region that the library itself does not need.</summary>
internal static class Moments
{
    /// <summary>The centre of gravity, from the polygon that follows every arc closely.</summary>
    public static Vec2 Centroid(Region region)
    {
        var origin = region.Bounds.LowerLeft;
        var (sum, area) = (default(Vec2), 0.0);
        foreach (var s in region.Segments)
        {
            var parts = s.IsArc ? 64 : 1;
            for (var i = 0; i < parts; i++)
            {
                var (a, b) = (s.PointAt((double)i / parts) - origin, s.PointAt((i + 1.0) / parts) - origin);
                var cross = a.Cross(b);
                (sum, area) = (sum + (a + b) * (cross / 6), area + cross / 2);
            }
        }

        return origin + sum * (1 / area);
    }
}
