using BuckGen.Geometry;

namespace BuckGen.Intake.Healing;

/// <summary>Decides whether two loops that meet at a point go through each other there or only touch.</summary>
/// <remarks>
/// Both ways are followed out of the point, forward and backward, to a circle round it; the loops cross when the four places
/// on the circle alternate. Where two of them can't be distinguished, because the loops run along each other, a larger circle is
/// taken. Loops that never part by more than the tolerance only touch, and so does a way that dips in by less than that.
/// </remarks>
internal static class Passing
{
    /// <summary>True when the loops go through each other; null when they never part clearly enough to decide.</summary>
    /// <param name="a">The first loop.</param>
    /// <param name="onA">Number of its piece at the point.</param>
    /// <param name="b">The second loop.</param>
    /// <param name="onB">Number of its piece at the point.</param>
    /// <param name="point">Where they meet.</param>
    /// <param name="tolerance">How far apart they must come to have parted, mm.</param>
    /// <param name="steps">Counts the pieces walked over, so that the caller can stop.</param>
    public static bool? Crosses(Loop a, int onA, Loop b, int onB, Vec2 point, double tolerance, ref long steps)
    {
        var largest = Math.Max(a.Bounds.Diagonal, b.Bounds.Diagonal);
        for (var radius = 4 * tolerance; radius < largest; radius *= 2)
        {
            if (Exit(a, onA, point, radius, true, ref steps) is not { } aForward
                || Exit(a, onA, point, radius, false, ref steps) is not { } aBack
                || Exit(b, onB, point, radius, true, ref steps) is not { } bForward
                || Exit(b, onB, point, radius, false, ref steps) is not { } bBack) return null;
            if (Clear(aForward, bForward) && Clear(aForward, bBack) && Clear(aBack, bForward) && Clear(aBack, bBack))
                return Between(point, aForward, aBack, bForward) != Between(point, aForward, aBack, bBack);
        }

        return null;

        bool Clear(Vec2 p, Vec2 q) => p.DistanceTo(q) > tolerance;
    }

    /// <summary>True when, turning left from the first direction, the third comes before the second.</summary>
    private static bool Between(Vec2 centre, Vec2 from, Vec2 to, Vec2 p) => Turn(centre, from, p) < Turn(centre, from, to);

    private static double Turn(Vec2 centre, Vec2 from, Vec2 to)
    {
        var angle = (from - centre).AngleTo(to - centre);
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }

    /// <summary>
    /// Where a loop, followed from a point on it, first leaves a circle round the point; null when it never does.
    /// </summary>
    private static Vec2? Exit(Loop loop, int index, Vec2 point, double radius, bool forward, ref long steps)
    {
        var segments = loop.Segments;
        var from = segments[index].NearestParameter(point);
        for (var step = 0; step <= segments.Length; step++, steps++)
        {
            var segment = segments[(forward ? index + step : index - step + 2 * segments.Length) % segments.Length];
            if (StaysWithin(segment, point, radius)) continue;
            if (!forward) segment = segment.Reversed();
            var start = step > 0 ? 0 : forward ? from : 1 - from;
            if (ExitOf(segment, start, point, radius) is { } exit) return exit;
        }

        return null;
    }

    /// <summary>
    /// True when no point of a piece can lie outside the circle: an arc of half a turn at most lies in the circle over its chord.
    /// </summary>
    private static bool StaysWithin(in Segment segment, Vec2 point, double radius) =>
        Math.Abs(segment.Bulge) <= 1
        && segment.Start.MidpointTo(segment.End).DistanceTo(point) + segment.Chord.Length / 2 < radius;

    private static Vec2? ExitOf(in Segment segment, double start, Vec2 point, double radius)
    {
        // An arc can leave the circle and come back, so it is checked in parts.
        var parts = segment.IsArc ? 4 : 1;
        var (inside, step) = (start, (1 - start) / parts);
        for (var i = 1; i <= parts; i++)
        {
            var outside = start + i * step;
            if (segment.PointAt(outside).DistanceTo(point) >= radius)
                return LeavingPoint(segment.Part(inside, outside), point, radius);
            inside = outside;
        }

        return null;
    }

    /// <summary>Where a piece of at most a quarter turn, which starts inside the circle and ends outside, leaves it.</summary>
    /// <remarks>
    /// What is halved is the tangent of a quarter of the angle walked, as a share of the bulge. A point then takes no sines, and
    /// a line is an arc of bulge 0.
    /// </remarks>
    private static Vec2 LeavingPoint(in Segment piece, Vec2 point, double radius)
    {
        var (from, bulge, chord) = (piece.Start, piece.Bulge, piece.Chord);
        var direction = chord * (1 - bulge * bulge) - chord.Left * (2 * bulge);
        var (inside, outside) = (0.0, 1.0);
        for (var halving = 0; halving < 40; halving++)
        {
            var middle = (inside + outside) / 2;
            if ((PointAt(middle) - point).LengthSquared >= radius * radius) outside = middle;
            else inside = middle;
        }

        return PointAt(outside);

        Vec2 PointAt(double share)
        {
            var tangent = bulge * share;
            var square = tangent * tangent;
            return from + (direction * (1 - square) + direction.Left * (2 * tangent)) * (share / ((1 + square) * (1 + square)));
        }
    }
}
