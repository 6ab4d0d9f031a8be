namespace BuckGen.Geometry;

/// <summary>A place where an edge turns more tightly than a limit.</summary>
/// <param name="Place">The corner, or the middle of the arc.</param>
/// <param name="Radius">Radius of the arc, mm; 0 for a corner.</param>
/// <param name="Left">True when the edge turns left: where it sticks out of a region.</param>
internal readonly record struct TightTurn(Vec2 Place, double Radius, bool Left)
{
    /// <summary>Turns of less than this, radians, are smooth.</summary>
    private const double Smooth = 0.2;

    /// <summary>The tight turns of a loop.</summary>
    /// <param name="loop">The loop.</param>
    /// <param name="minRadius">Minimum radius that is not tight, mm.</param>
    public static IEnumerable<TightTurn> Find(Loop loop, double minRadius)
    {
        var segments = loop.Segments;
        for (var i = 0; i < segments.Length; i++)
        {
            var (s, next) = (segments[i], segments[(i + 1) % segments.Length]);
            // An arc that has the radius within rounding is round enough.
            if (s.IsArc && s.Radius < minRadius * (1 - 1e-9) && Math.Abs(s.Sweep) > Smooth)
                yield return new(s.PointAt(0.5), s.Radius, s.Bulge > 0);
            var turn = s.DirectionAt(1).AngleTo(next.DirectionAt(0));
            if (Math.Abs(turn) > Smooth) yield return new(s.End, 0, turn > 0);
        }
    }
}
