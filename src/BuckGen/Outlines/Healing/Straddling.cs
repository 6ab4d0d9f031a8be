using BuckGen.Geometry;

namespace BuckGen.Outlines.Healing;

/// <summary>Tells whether a loop lies partly inside and partly outside another.</summary>
/// <remarks>
/// Loops that run along each other on one stretch may part inside on its one end and outside on its other. No single meeting
/// point shows that when they meet again further on, but a loop that has points on both sides has crossed.
/// </remarks>
internal static class Straddling
{
    public static bool Straddles(Loop loop, Loop other, double tolerance)
    {
        var around = new LoopInterior(other);
        var (inside, outside) = (false, false);
        foreach (var segment in loop.Segments)
            foreach (var p in (ReadOnlySpan<Vec2>)[segment.Start, segment.PointAt(0.5)])
            {
                if (around.IsNear(p, tolerance)) continue;
                if (around.Contains(p)) inside = true;
                else outside = true;
                if (inside && outside) return true;
            }

        return false;
    }
}
