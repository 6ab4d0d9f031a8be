using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;
using ShimSkiaSharp;

namespace BuckGen.Intake.Svg;

/// <summary>Turns path commands of the resolved scene into curves; circles and arcs stay what they are.</summary>
internal sealed class SvgCurves
{
    private readonly ImmutableArray<SvgStroke>.Builder strokes = ImmutableArray.CreateBuilder<SvgStroke>();
    private readonly ImmutableArray<Curve>.Builder curves = ImmutableArray.CreateBuilder<Curve>();
    private Vec2 start;
    private Vec2 at;

    /// <summary>The subpaths of a path in user units, those without any extent left out.</summary>
    public static ImmutableArray<SvgStroke> Strokes(SKPath path)
    {
        var walk = new SvgCurves();
        foreach (var command in path.Commands ?? []) walk.Add(command);
        walk.Finish(false);
        return walk.strokes.ToImmutable();
    }

    private void Add(PathCommand command)
    {
        switch (command)
        {
            case MoveToPathCommand c:
                Finish(false);
                at = start = new(c.X, c.Y);
                break;
            case LineToPathCommand c:
                LineTo(new(c.X, c.Y));
                break;
            case CubicToPathCommand c:
                CurveTo(new BezierCurve(at, new(c.X0, c.Y0), new(c.X1, c.Y1), new(c.X2, c.Y2)), new(c.X2, c.Y2));
                break;
            case QuadToPathCommand c:
                CurveTo(BezierCurve.Quadratic(at, new(c.X0, c.Y0), new(c.X1, c.Y1)), new(c.X1, c.Y1));
                break;
            case ArcToPathCommand c:
                ArcTo(c);
                break;
            case ClosePathCommand:
                Finish(true);
                at = start;
                break;
            case AddPolyPathCommand { Points: { Count: > 0 } points } c:
                Finish(false);
                at = start = new(points[0].X, points[0].Y);
                foreach (var p in points.Skip(1)) LineTo(new(p.X, p.Y));
                Finish(c.Close);
                break;
            case AddRectPathCommand c:
                Rectangle(c.Rect, 0, 0);
                break;
            case AddRoundRectPathCommand c:
                // A corner that is round in one direction only is square: SVG 1.1, 9.2.
                if (c.Rx > 0 && c.Ry > 0) Rectangle(c.Rect, c.Rx, c.Ry);
                else Rectangle(c.Rect, 0, 0);
                break;
            case AddCirclePathCommand c:
                Whole(EllipseCurve.Circular(new(c.X, c.Y), c.Radius, 0, 2 * Math.PI));
                break;
            case AddOvalPathCommand c:
                var (rx, ry) = (c.Rect.Width / 2.0, c.Rect.Height / 2.0);
                Whole(new EllipseCurve(new(c.Rect.Left + rx, c.Rect.Top + ry), new(rx, 0), new(0, ry), 0, 2 * Math.PI));
                break;
        }
    }

    /// <summary>Ends the subpath that is being drawn.</summary>
    private void Finish(bool closed)
    {
        if (curves.Count > 0) strokes.Add(new(curves.ToImmutable(), closed));
        curves.Clear();
    }

    private void LineTo(Vec2 to) => CurveTo(new LineCurve(at, to), to);

    private void CurveTo(Curve curve, Vec2 to)
    {
        var isPoint = curve is LineCurve && to == at || curve is BezierCurve b && b.P0 == b.P1 && b.P1 == b.P2 && b.P2 == b.P3;
        if (!isPoint) curves.Add(curve);
        at = to;
    }

    private void ArcTo(ArcToPathCommand c)
    {
        Vec2 to = new(c.X, c.Y);
        var curve = SvgArc.Between(at, to, new(c.Rx, c.Ry), c.XAxisRotate * Math.PI / 180,
            c.LargeArc == SKPathArcSize.Large, c.Sweep == SKPathDirection.Clockwise);
        CurveTo(curve, to);
    }

    private void Whole(EllipseCurve ellipse)
    {
        Finish(false);
        curves.Add(ellipse);
        Finish(true);
    }

    private void Rectangle(SKRect r, double rx, double ry)
    {
        Finish(false);
        double left = r.Left, top = r.Top, right = r.Right, bottom = r.Bottom;
        at = start = new(left + rx, top);
        LineTo(new(right - rx, top));
        Corner(new(right - rx, top + ry), -Math.PI / 2);
        LineTo(new(right, bottom - ry));
        Corner(new(right - rx, bottom - ry), 0);
        LineTo(new(left + rx, bottom));
        Corner(new(left + rx, bottom - ry), Math.PI / 2);
        LineTo(new(left, top + ry));
        Corner(new(left + rx, top + ry), Math.PI);
        Finish(true);

        void Corner(Vec2 centre, double from)
        {
            if (rx <= 0 || ry <= 0) return;
            var quarter = new EllipseCurve(centre, new(rx, 0), new(0, ry), from, from + Math.PI / 2);
            CurveTo(quarter, quarter.End);
        }
    }
}
