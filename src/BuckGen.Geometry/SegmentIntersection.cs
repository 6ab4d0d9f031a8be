namespace BuckGen.Geometry;

/// <summary>The points that two pieces have in common.</summary>
internal static class SegmentIntersection
{
    /// <summary>
    /// Writes the points, at most two, at which two pieces cross or touch; pieces that lie on each other give none.
    /// </summary>
    /// <param name="a">The first piece.</param>
    /// <param name="b">The second piece.</param>
    /// <param name="reach">How far beyond its ends, mm, a piece still counts.</param>
    /// <param name="points">Room for two points.</param>
    /// <returns>How many points were written.</returns>
    public static int Find(in Segment a, in Segment b, double reach, Span<Vec2> points)
    {
        Span<Vec2> common = stackalloc Vec2[2];
        var found = (a.IsArc, b.IsArc) switch
        {
            (false, false) => OfLines(a, b, common),
            (false, true) => OfLineAndCircle(a, b, common),
            (true, false) => OfLineAndCircle(b, a, common),
            _ => OfCircles(a, b, common),
        };
        var count = 0;
        for (var i = 0; i < found; i++)
            if (IsOn(a, common[i], reach) && IsOn(b, common[i], reach)) points[count++] = common[i];
        return count;
    }

    private static bool IsOn(in Segment s, Vec2 p, double reach)
    {
        var t = s.ParameterOf(p);
        return t is >= 0 and <= 1
            || (p - s.Start).LengthSquared <= reach * reach || (p - s.End).LengthSquared <= reach * reach;
    }

    private static int OfLines(in Segment a, in Segment b, Span<Vec2> points)
    {
        var cross = a.Chord.Cross(b.Chord);
        if (cross == 0) return 0;
        points[0] = a.PointAt((b.Start - a.Start).Cross(b.Chord) / cross);
        return 1;
    }

    private static int OfLineAndCircle(in Segment line, in Segment arc, Span<Vec2> points)
    {
        var (centre, radius, along) = (arc.Centre, arc.Radius, line.Chord.Unit());
        var foot = line.Start + along * (centre - line.Start).Dot(along);
        return Either(foot, along, radius * radius - (foot - centre).LengthSquared, points);
    }

    private static int OfCircles(in Segment a, in Segment b, Span<Vec2> points)
    {
        var (radius, other) = (a.Radius, b.Radius);
        var between = b.Centre - a.Centre;
        var distance = between.Length;
        if (distance == 0) return 0;
        var along = (distance * distance + radius * radius - other * other) / (2 * distance);
        var unit = between * (1 / distance);
        return Either(a.Centre + unit * along, unit.Left, radius * radius - along * along, points);
    }

    private static int Either(Vec2 foot, Vec2 direction, double halfSquared, Span<Vec2> points)
    {
        if (halfSquared < 0) return 0;
        var half = direction * Math.Sqrt(halfSquared);
        (points[0], points[1]) = (foot + half, foot - half);
        return 2;
    }
}
