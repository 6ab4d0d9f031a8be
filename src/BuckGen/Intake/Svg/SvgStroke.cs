using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;

namespace BuckGen.Intake.Svg;

/// <summary>One subpath in user units.</summary>
/// <param name="Curves">Its pieces; never empty.</param>
/// <param name="Closed">True when it ends with a closing command.</param>
internal sealed record SvgStroke(ImmutableArray<Curve> Curves, bool Closed)
{
    // Single precision leaves ends that were drawn as one point apart by about this, mm; no line is put between.
    private const double SamePoint = 1e-4;
    private const int Samples = 16;

    /// <summary>The largest coordinate, for the loss of digits.</summary>
    public double Reach => Points().Max(p => Math.Max(Math.Abs(p.X), Math.Abs(p.Y)));

    /// <summary>The subpath on the page; null when nothing of it is to be seen.</summary>
    /// <param name="map">From user units to millimetres.</param>
    /// <param name="filled">True when its shape is filled.</param>
    /// <param name="stroked">True when its shape has a line.</param>
    public (ImmutableArray<Curve> Curves, bool Closed)? Placed(Affine map, bool filled, bool stroked)
    {
        ImmutableArray<Curve> curves = [.. Curves.Select(c => Circular(c.Transformed(map)))];
        var (end, start) = (curves[^1].End, curves[0].Start);
        var meets = end.DistanceTo(start) <= SamePoint;
        // A fill closes what is open, but it can't show a line without width: that is a drawn line, or nothing.
        if (!(Closed || meets) && !(filled && Encloses(curves))) return stroked ? (curves, false) : null;
        return (meets ? curves : curves.Add(new LineCurve(end, start)), true);
    }

    private IEnumerable<Vec2> Points() =>
        Curves.SelectMany(c => Enumerable.Range(0, Samples + 1).Select(i => c.PointAt((double)i / Samples)));

    private static bool Encloses(ImmutableArray<Curve> curves)
    {
        var start = curves[0].Start;
        Vec2[] points = [.. curves.SelectMany(c => Enumerable.Range(1, c is LineCurve ? 1 : Samples).Select(i =>
            (c is LineCurve ? c.End : c.PointAt((double)i / Samples)) - start))];
        // Off the chord anywhere: a figure of eight encloses something though its areas cancel.
        var far = points.MaxBy(p => p.LengthSquared);
        return far.Length > 0 && points.Any(p => Math.Abs(p.Cross(far)) > SamePoint * far.Length);
    }

    /// <summary>Takes an ellipse that is a circle but for single precision as the circle it was drawn as.</summary>
    private static Curve Circular(Curve curve)
    {
        if (curve is not EllipseCurve { CircleRadius: null } e) return curve;
        var (u, v) = (e.U.Length, e.V.Length);
        if (Math.Abs(u - v) > SamePoint || Math.Abs(e.U.Dot(e.V)) > SamePoint * u) return curve;
        var first = e.U.Unit() * ((u + v) / 2);
        return e with { U = first, V = first.Left * Math.Sign(e.U.Cross(e.V)) };
    }
}
