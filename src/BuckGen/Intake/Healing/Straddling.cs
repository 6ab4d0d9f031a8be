using BuckGen.Geometry;

namespace BuckGen.Intake.Healing;

/// <summary>Tells whether a loop lies partly inside and partly outside another.</summary>
/// <remarks>
/// Loops that run along each other on one stretch may part inside on its one end and outside on its other. No single meeting
/// point shows that when they meet again further on, but a loop that has points on both sides has crossed.
/// </remarks>
internal static class Straddling
{
    /// <summary>True when a loop has points on both sides of another.</summary>
    /// <param name="loop">The loop.</param>
    /// <param name="other">The other.</param>
    /// <param name="around">What lies within the other.</param>
    /// <param name="tolerance">How near the edge a point counts as on it, mm.</param>
    /// <param name="probes">Counts the points checked, those far outside as a tenth.</param>
    public static bool Straddles(Loop loop, Loop other, LoopInterior around, double tolerance, ref long probes)
    {
        var bounds = other.Bounds.Grown(tolerance);
        var (inside, outside) = (false, false);
        probes += loop.Segments.Length / 5;
        foreach (var segment in loop.Segments)
            foreach (var p in (ReadOnlySpan<Vec2>)[segment.Start, segment.PointAt(0.5)])
            {
                if (!bounds.Contains(p))
                {
                    if (inside) return true;
                    outside = true;
                    continue;
                }

                probes++;
                if (around.IsNear(p, tolerance)) continue;
                if (around.Contains(p)) inside = true;
                else outside = true;
                if (inside && outside) return true;
            }

        return false;
    }
}
