namespace BuckGen.Geometry.Facing;

/// <summary>The two nearest points of two lines or arcs; exact but for rounding.</summary>
internal static class ClosestPoints
{
    /// <summary>Lines are parallel below this sine of their angle; then the middle of the shared stretch is taken.</summary>
    private const double Parallel = 1e-6;

    /// <summary>The nearest points of two pieces that do not cross.</summary>
    public static (Vec2 OnA, Vec2 OnB) Between(Segment a, Segment b)
    {
        if (SharedMiddle(a, b) is { } middle) return middle;
        (Vec2 OnA, Vec2 OnB) best = (a.Start, b.PointAt(b.NearestParameter(a.Start)));
        Keep(ref best, a.End, b.PointAt(b.NearestParameter(a.End)));
        Keep(ref best, a.PointAt(a.NearestParameter(b.Start)), b.Start);
        Keep(ref best, a.PointAt(a.NearestParameter(b.End)), b.End);
        if (a.IsArc && b.IsArc) AlongCentres(ref best, a, b);
        else if (a.IsArc) Perpendicular(ref best, b, a, arcFirst: true);
        else if (b.IsArc) Perpendicular(ref best, a, b, arcFirst: false);
        return best;
    }

    private static void Keep(ref (Vec2 OnA, Vec2 OnB) best, Vec2 onA, Vec2 onB)
    {
        if ((onA - onB).LengthSquared < (best.OnA - best.OnB).LengthSquared) best = (onA, onB);
    }

    /// <summary>The middle of the stretch along which two parallel lines face each other.</summary>
    private static (Vec2 OnA, Vec2 OnB)? SharedMiddle(Segment a, Segment b)
    {
        if (a.IsArc || b.IsArc || Math.Abs(a.Chord.Cross(b.Chord)) > Parallel * a.Chord.Length * b.Chord.Length) return null;
        var (t0, t1) = (a.ParameterOf(b.Start), a.ParameterOf(b.End));
        var (low, high) = (Math.Max(0, Math.Min(t0, t1)), Math.Min(1, Math.Max(t0, t1)));
        if (low >= high) return null;
        var p = a.PointAt((low + high) / 2);
        return (p, b.PointAt(b.NearestParameter(p)));
    }

    /// <summary>On the line through both centres, on either side of each.</summary>
    private static void AlongCentres(ref (Vec2 OnA, Vec2 OnB) best, Segment a, Segment b)
    {
        var between = b.Centre - a.Centre;
        if (between.LengthSquared == 0) return;
        var unit = between.Unit();
        foreach (var (sideA, sideB) in (ReadOnlySpan<(int, int)>)[(1, -1), (1, 1), (-1, -1), (-1, 1)])
        {
            var (p, q) = (a.Centre + unit * (a.Radius * sideA), b.Centre + unit * (b.Radius * sideB));
            if (a.ParameterOf(p) is >= 0 and <= 1 && b.ParameterOf(q) is >= 0 and <= 1) Keep(ref best, p, q);
        }
    }

    /// <summary>From the arc's centre square to the line, on either side of the centre.</summary>
    private static void Perpendicular(ref (Vec2 OnA, Vec2 OnB) best, Segment line, Segment arc, bool arcFirst)
    {
        var t = line.ParameterOf(arc.Centre);
        if (t is < 0 or > 1) return;
        var foot = line.PointAt(t);
        var away = foot - arc.Centre;
        if (away.LengthSquared == 0) return;
        foreach (var side in (ReadOnlySpan<int>)[1, -1])
        {
            var p = arc.Centre + away.Unit() * (arc.Radius * side);
            if (arc.ParameterOf(p) is not (>= 0 and <= 1)) continue;
            if (arcFirst) Keep(ref best, p, foot);
            else Keep(ref best, foot, p);
        }
    }
}
