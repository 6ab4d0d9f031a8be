using BuckGen.Geometry;
using BuckGen.Geometry.Curves;

namespace BuckGen.Intake.Healing;

/// <summary>How far from the origin a curve is defined; beyond a limit its numbers are too coarse to be fitted.</summary>
internal static class CurveReach
{
    /// <summary>
    /// A hundred kilometres in mm. There a number still holds a thousandth of the smallest tolerance, and what is built around an
    /// outline stays well within the numbers of a DXF.
    /// </summary>
    public const double MaxReach = 1e8;

    /// <summary>The largest coordinate among the points that define a curve, mm; not a number where they are none.</summary>
    public static double Compute(Curve curve) => curve switch
    {
        BezierCurve b => MaxLength([b.P0, b.P1, b.P2, b.P3]),
        NurbsCurve n => MaxLength(n.Points.AsSpan()),
        // A flat circular arc has its centre far away and is exact all the same.
        EllipseCurve { CircleRadius: null } e => MaxLength([e.Centre, e.U, e.V]),
        _ => MaxLength([curve.Start, curve.End]),
    };

    private static double MaxLength(ReadOnlySpan<Vec2> points)
    {
        var largest = 0.0;
        foreach (var p in points) largest = Math.Max(largest, Math.Max(Math.Abs(p.X), Math.Abs(p.Y)));
        return largest;
    }
}
