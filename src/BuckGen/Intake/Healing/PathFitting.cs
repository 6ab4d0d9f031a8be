using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>A drawn path as lines and arcs.</summary>
/// <param name="Segments">The pieces in order, none of zero length; empty when the whole path has no length.</param>
/// <param name="Closed">True when the path closes by itself.</param>
/// <param name="Path">The path it was fitted to.</param>
internal sealed record FittedPath(ImmutableArray<Segment> Segments, bool Closed, DrawnPath Path);

/// <summary>Turns drawn curves into lines and arcs that meet exactly.</summary>
internal static class PathFitting
{
    /// <summary>The paths as lines and arcs, those without length left out.</summary>
    /// <exception cref="OutlineException">A curve reaches beyond every drawing, its numbers do not define a curve, or the pieces
    /// are too many.</exception>
    public static (Healed<ImmutableArray<FittedPath>> Paths, FittedCurves Curves) Fit(
        ImmutableArray<DrawnPath> paths, string name, Tolerance tolerance, int maxPieces, CancellationToken cancellation)
    {
        var fitted = ImmutableArray.CreateBuilder<FittedPath>(paths.Length);
        var (dropped, empty, first, curves, pieces) = (new List<Vec2>(), 0, "", FittedCurves.None, 0);
        foreach (var path in paths)
        {
            cancellation.ThrowIfCancellationRequested();
            foreach (var curve in path.Curves) RefuseFar(curve, path, name);
            var before = dropped.Count + empty;
            var segments = Connected(path, tolerance, dropped, Count, ref curves);
            if (!segments.All(s => s.Start.IsFinite && s.End.IsFinite && double.IsFinite(s.Bulge)))
                throw new OutlineException($"{name}: {path.Source}: its numbers do not define a curve; redraw it");
            if (path.Curves.IsEmpty) empty++;
            else if (segments.IsEmpty && dropped.Count + empty == before) dropped.Add(path.Curves[0].PointAt(0));
            if (before == 0 && dropped.Count + empty > 0) first = path.Source;
            if (segments.IsEmpty) continue;
            var meets = tolerance.AreCoincident(segments[0].Start, segments[^1].End);
            fitted.Add(new(segments, segments.Length > 1 && (path.Closed || meets), path));
        }

        var count = dropped.Count + empty;
        ImmutableArray<Repair> repairs = count == 0 ? [] :
            [new("zero-length-dropped", count, 0, [.. dropped],
                $"{CountText.Format(count, "piece")} without length {CountText.WasOrWere(count)} left out, the first in "
                + $"{first}.")];
        return (new(fitted.ToImmutable(), repairs), curves);

        void Count(int more, DrawnPath path)
        {
            cancellation.ThrowIfCancellationRequested();
            if ((pieces += more) > maxPieces)
                throw new OutlineException(FormattableString.Invariant(
                    $"{name}: {path.Source}: up to here the drawing comes to {pieces} lines and arcs at a tolerance of ")
                    + FormattableString.Invariant(
                        $"{tolerance.Chord:0.####} mm, the limit for a file of its size is {maxPieces}; simplify it, or ")
                        + "raise the tolerance");
        }
    }

    private static void RefuseFar(Curve curve, DrawnPath path, string name)
    {
        var reach = CurveReach.Compute(curve);
        if (!(reach <= CurveReach.MaxReach))
            throw new OutlineException(FormattableString.Invariant(
                $"{name}: {path.Source}: it reaches {reach:G3} mm from the origin, the limit is {CurveReach.MaxReach:G3} ")
                + "mm; move or repair it");
    }

    /// <summary>Fits each curve and lets every piece start where the one before ends.</summary>
    private static ImmutableArray<Segment> Connected(DrawnPath path, Tolerance tolerance, List<Vec2> dropped,
        Action<int, DrawnPath> count, ref FittedCurves curves)
    {
        var segments = ImmutableArray.CreateBuilder<Segment>();
        foreach (var curve in path.Curves)
        {
            var before = segments.Count;
            var fit = ArcFitting.Fit(curve, tolerance.Chord);
            count(fit.Pieces.Length, path);
            if (curve is not (LineCurve or EllipseCurve { CircleRadius: not null }))
                curves = new(curves.Count + 1, curves.Pieces + fit.Pieces.Length, Math.Max(curves.MaxError, fit.Error));
            foreach (var s in fit.Pieces)
            {
                var joined = segments.Count > 0 ? s with { Start = segments[^1].End } : s;
                if (!tolerance.AreCoincident(joined.Start, joined.End)) segments.Add(joined);
            }

            // A path that is marked closed may come back to its start by itself as well.
            if (segments.Count == before && !(path.Closed && ReferenceEquals(curve, path.Curves[^1])))
                dropped.Add(curve.PointAt(0));
        }

        return segments.ToImmutable();
    }
}
