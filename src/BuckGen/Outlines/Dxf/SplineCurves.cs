using System.Collections.Immutable;
using BuckGen.Dxf;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;

namespace BuckGen.Outlines.Dxf;

/// <summary>The curves of a SPLINE.</summary>
internal static class SplineCurves
{
    public static EntityCurves Of(DxfSpline spline)
    {
        FlatPlane.RequireLevel(spline, spline.ControlPoints.Concat(spline.FitPoints).Select(p => p.Z));
        if (IsFitOnly(spline)) return ThroughFitPoints(spline);
        // The closed and periodic flags change nothing: the curve is what points and knots say.
        return new([.. NurbsCurve.Stretches(spline.Degree, spline.Knots, Flat(spline.ControlPoints), spline.Weights)], false);
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
