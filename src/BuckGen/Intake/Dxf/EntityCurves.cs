using System.Collections.Immutable;
using BuckGen.Dxf.Entities;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;

namespace BuckGen.Intake.Dxf;

/// <summary>The curves of one entity, in the coordinates of the drawing.</summary>
/// <param name="Curves">Pieces in order; a line without length for an entity of no size.</param>
/// <param name="Closed">True when they close.</param>
internal sealed record EntityCurves(ImmutableArray<Curve> Curves, bool Closed)
{
    // A few programs write 6.28 for a whole turn.
    private const double NearlyWhole = 0.0035;
    private const double MinBulge = 1e-8;

    /// <summary>An entity of no size, so that its place can be reported.</summary>
    private static EntityCurves Point(Vec2 place) => new([new LineCurve(place, place)], false);

    /// <summary>The curves, or null for an entity that draws none.</summary>
    public static EntityCurves? FromEntity(DxfEntity entity) => entity switch
    {
        DxfLine line => Line(line),
        DxfArc arc => Arc(arc),
        DxfCircle circle => Circle(circle),
        DxfEllipse ellipse => Ellipse(ellipse),
        DxfPolyline { Kind: not DxfPolylineKind.Mesh } polyline => Polyline(polyline),
        DxfSpline spline => SplineCurves.FromSpline(spline),
        _ => null,
    };

    private static EntityCurves Line(DxfLine line)
    {
        FlatPlane.RequireLevel(line, [line.Start.Z, line.End.Z]);
        return new([new LineCurve(new(line.Start.X, line.Start.Y), new(line.End.X, line.End.Y))], false);
    }

    private static EntityCurves Arc(DxfArc arc)
    {
        var sweep = (arc.EndAngle - arc.StartAngle) % 360;
        if (sweep <= 0) sweep += 360;
        return Circular(arc, arc.Centre, arc.Radius, double.DegreesToRadians(arc.StartAngle % 360),
            double.DegreesToRadians(sweep));
    }

    private static EntityCurves Circle(DxfCircle circle) => Circular(circle, circle.Centre, circle.Radius, 0, 2 * Math.PI);

    private static EntityCurves Circular(DxfEntity entity, DxfPoint centre, double radius, double from, double sweep) =>
        radius == 0
        ? Point(FlatPlane.MapOf(entity).Apply(new(centre.X, centre.Y)))
        : new([EllipseCurve.Circular(new(centre.X, centre.Y), Math.Abs(radius), from, from + sweep)
            .Transformed(FlatPlane.MapOf(entity))],
            sweep >= 2 * Math.PI);

    private static EntityCurves Ellipse(DxfEllipse ellipse)
    {
        FlatPlane.RequireLevel(ellipse, [0, ellipse.MajorAxis.Z]);
        var u = new Vec2(ellipse.MajorAxis.X, ellipse.MajorAxis.Y);
        var centre = new Vec2(ellipse.Centre.X, ellipse.Centre.Y);
        if (u.LengthSquared == 0 || ellipse.Ratio == 0) return Point(centre);
        // Seen from behind, the minor axis lies on the other side.
        var v = u.Left * (FlatPlane.MapOf(ellipse).Mirrors ? -ellipse.Ratio : ellipse.Ratio);
        var sweep = (ellipse.EndParameter - ellipse.StartParameter) % (2 * Math.PI);
        if (sweep <= 0) sweep += 2 * Math.PI;
        var whole = 2 * Math.PI - sweep < NearlyWhole;
        if (whole) sweep = 2 * Math.PI;
        return new([new EllipseCurve(centre, u, v, ellipse.StartParameter, ellipse.StartParameter + sweep)], whole);
    }

    private static EntityCurves Polyline(DxfPolyline polyline)
    {
        FlatPlane.RequireLevel(polyline, polyline.Vertices.Select(v => v.Z));
        var map = polyline.Kind == DxfPolylineKind.Spatial ? Affine.Identity : FlatPlane.MapOf(polyline);
        var corners = polyline.Vertices;
        var count = polyline.Closed ? corners.Length : corners.Length - 1;
        if (corners.IsEmpty) return new([], false);
        if (count < 1 || corners.Length < 2) return Point(map.Apply(new(corners[0].X, corners[0].Y)));
        var pieces = Enumerable.Range(0, count)
            .Select(i => Piece(corners[i], corners[(i + 1) % corners.Length]).Transformed(map));
        return new([.. pieces], polyline.Closed);
    }

    private static Curve Piece(DxfVertex from, DxfVertex to)
    {
        var (start, end) = (new Vec2(from.X, from.Y), new Vec2(to.X, to.Y));
        if (Math.Abs(from.Bulge) < MinBulge || start == end) return new LineCurve(start, end);
        var arc = new Segment(start, end, from.Bulge);
        var toStart = start - arc.Centre;
        var angle = Math.Atan2(toStart.Y, toStart.X);
        return EllipseCurve.Circular(arc.Centre, arc.Radius, angle, angle + arc.Sweep);
    }
}
