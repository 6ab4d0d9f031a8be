using System.Collections.Immutable;

namespace BuckGen.Geometry.Curves;

/// <summary>The lines and arcs that replace a curve.</summary>
/// <param name="Pieces">Joined end to start; empty for a curve without length.</param>
/// <param name="Error">The maximum distance found between them and the curve, mm; 0 where the curve is itself a line or an
/// arc.</param>
internal sealed record CurveFit(ImmutableArray<Segment> Pieces, double Error);

/// <summary>
/// Fits curves with lines and arcs within a stated distance, so that later offsets and cut files stay small and smooth.
/// </summary>
/// <remarks>
/// A curved stretch is replaced by a pair of arcs that share its end points and end directions (a biarc with equal tangent
/// lengths). It is halved until each pair lies within the tolerance. Source: D. S. Meek and D. J. Walton, "Approximating smooth
/// planar curves by arc splines", J. Comput. Appl. Math. 59 (1995), from memory.
/// </remarks>
internal static class ArcFitting
{
    private const int Samples = 40;
    private const int MaxHalvings = 24;

    /// <summary>A curve that spans at most this many tolerances is fitted as a whole.</summary>
    private const double Short = 10;

    /// <summary>A piece that turns less than this, radians, may become a line.</summary>
    private const double StraightTurn = 2e-4;

    /// <summary>The lines and arcs that replace a curve; joined end to start.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="tolerance">Maximum distance between curve and fit, mm.</param>
    public static CurveFit Fit(Curve curve, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(curve);
        var pieces = ImmutableArray.CreateBuilder<Segment>();
        var error = 0.0;
        switch (curve)
        {
            case LineCurve line:
                pieces.Add(new(line.From, line.To));
                break;
            case EllipseCurve { CircleRadius: not null } arc:
                AddCircular(pieces, arc);
                break;
            default:
                // Quarters first, so that a loop or an S never looks straight by chance; on a few tolerances there is room for
                // neither.
                var parts = curve.MaxLength <= Short * tolerance && curve.Start != curve.End ? 1 : 4;
                for (var part = 0; part < parts; part++)
                    error = Math.Max(error, AddFitted(pieces, curve, (double)part / parts, (part + 1.0) / parts, tolerance, 0));
                break;
        }

        return new(pieces.ToImmutable(), error);
    }

    private static void AddCircular(ImmutableArray<Segment>.Builder pieces, EllipseCurve arc)
    {
        var sweep = (arc.Phi1 - arc.Phi0) * Math.Sign(arc.U.Cross(arc.V));
        var parts = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / Math.PI - 1e-9));
        for (var i = 0; i < parts; i++)
            pieces.Add(Segment.Arc(arc.PointAt((double)i / parts), arc.PointAt((i + 1.0) / parts), sweep / parts));
    }

    /// <summary>Adds the fit of a stretch and returns its distance from the curve, mm.</summary>
    private static double AddFitted(
        ImmutableArray<Segment>.Builder pieces, Curve curve, double t0, double t1, double tolerance, int depth)
    {
        var (start, end) = (curve.PointAt(t0), curve.PointAt(t1));
        if (start == end) return 0;
        var chord = new Segment(start, end);
        var (leaving, arriving) = (Direction(curve, t0, t1), -Direction(curve, t1, t0));
        // A line may replace a piece only where it also keeps its directions: a mitre grows with their error.
        if (Math.Abs(chord.Chord.AngleTo(leaving)) < StraightTurn && Math.Abs(chord.Chord.AngleTo(arriving)) < StraightTurn
            && Distance(curve, t0, t1, chord, chord, tolerance / 20) is { } besideLine)
        {
            pieces.Add(chord);
            return besideLine;
        }

        if (depth == MaxHalvings)
        {
            pieces.Add(chord);
            return Distance(curve, t0, t1, chord, chord, double.PositiveInfinity) ?? 0;
        }

        var (first, second) = Biarc(start, leaving, end, arriving);
        if (Distance(curve, t0, t1, first, second, tolerance) is { } besideArcs)
        {
            pieces.Add(first);
            pieces.Add(second);
            return besideArcs;
        }

        var middle = (t0 + t1) / 2;
        return Math.Max(
            AddFitted(pieces, curve, t0, middle, tolerance, depth + 1),
            AddFitted(pieces, curve, middle, t1, tolerance, depth + 1));
    }

    /// <summary>
    /// Direction at <paramref name="at"/>, looking toward <paramref name="toward"/>; also where the derivative vanishes.
    /// </summary>
    private static Vec2 Direction(Curve curve, double at, double toward)
    {
        var derivative = curve.DerivativeAt(at);
        if (toward < at) derivative = -derivative;
        if (derivative.LengthSquared > 1e-18) return derivative.Unit();
        var near = curve.PointAt(at + (toward - at) * 1e-4) - curve.PointAt(at);
        return near.LengthSquared > 0 ? near.Unit() : (curve.PointAt(toward) - curve.PointAt(at)).Unit();
    }

    private static (Segment First, Segment Second) Biarc(Vec2 start, Vec2 startDirection, Vec2 end, Vec2 endDirection)
    {
        var v = end - start;
        var sum = startDirection + endDirection;
        var (a, b, c) = (2 * (1 - startDirection.Dot(endDirection)), 2 * v.Dot(sum), -v.LengthSquared);
        var root = Math.Sqrt(b * b - 4 * a * c);
        // The stable form of the positive root; for parallel directions it is the linear solution.
        var d = -2 * c / (b + root);
        if (!double.IsFinite(d) || d <= 0) return (new(start, start.MidpointTo(end)), new(start.MidpointTo(end), end));
        var joint = (start + startDirection * d).MidpointTo(end - endDirection * d);
        return (Tangent(start, startDirection, joint), Tangent(end, -endDirection, joint).Reversed());
    }

    private static Segment Tangent(Vec2 start, Vec2 direction, Vec2 end)
    {
        var half = direction.AngleTo(end - start);
        var arc = new Segment(start, end, Math.Tan(half / 2));
        return arc.Sagitta < 1e-9 ? arc with { Bulge = 0 } : arc;
    }

    /// <summary>The maximum distance of a stretch from two pieces, mm; null when it is beyond the limit.</summary>
    private static double? Distance(Curve curve, double t0, double t1, Segment first, Segment second, double limit)
    {
        var largest = 0.0;
        for (var i = 1; i < Samples; i++)
        {
            var p = curve.PointAt(t0 + (t1 - t0) * i / Samples);
            largest = Math.Max(largest, Math.Min(first.DistanceTo(p), second.DistanceTo(p)));
            if (largest > limit) return null;
        }

        return largest;
    }
}
