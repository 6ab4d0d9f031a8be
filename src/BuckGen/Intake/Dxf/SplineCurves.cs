using System.Collections.Immutable;
using System.Globalization;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;

namespace BuckGen.Intake.Dxf;

/// <summary>The curves of a SPLINE.</summary>
internal static class SplineCurves
{
    // Stretches that share their end may differ only by rounding.
    private const double MaxJump = 1e-6;

    public static EntityCurves FromSpline(DxfSpline spline)
    {
        FlatPlane.RequireLevel(spline, spline.ControlPoints.Concat(spline.FitPoints).Select(p => p.Z));
        if (IsFitOnly(spline)) return ThroughFitPoints(spline);
        // The closed and periodic flags change nothing: points and knots define the curve.
        var stretches = NurbsCurve.Stretches(spline.Degree, spline.Knots, Flat(spline.ControlPoints), spline.Weights);
        foreach (var (before, after) in stretches.Zip(stretches.Skip(1)))
            if (before.End.DistanceTo(after.Start) > MaxJump)
                throw new DxfException(
                    string.Create(CultureInfo.InvariantCulture,
                        $"the curve breaks at {before.End}, where a knot is repeated more than {spline.Degree} times; redraw it"),
                    spline.Line, spline.Type);
        return new([.. stretches], false);
    }

    /// <summary>True when the file gives only points to pass through, which leaves the curve between them open.</summary>
    public static bool IsFitOnly(DxfSpline spline) => spline.ControlPoints.IsEmpty;

    private static EntityCurves ThroughFitPoints(DxfSpline spline)
    {
        var points = Flat(spline.FitPoints);
        var distinct = points.Where((p, i) => i == 0 || p != points[i - 1]).ToImmutableArray();
        if (spline.Closed && distinct.Length > 2 && distinct[0] != distinct[^1]) distinct = distinct.Add(distinct[0]);
        if (distinct.Length < 2) return new([], false);
        var closed = distinct.Length > 3 && distinct[0] == distinct[^1];
        return new([.. SplineThrough.Points(distinct, closed)], closed);
    }

    private static ImmutableArray<Vec2> Flat(ImmutableArray<DxfPoint> points) => [.. points.Select(p => new Vec2(p.X, p.Y))];
}
