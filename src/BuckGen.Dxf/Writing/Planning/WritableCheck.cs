using System.Globalization;
using BuckGen.Dxf.Entities;

namespace BuckGen.Dxf.Writing.Planning;

/// <summary>Refuses what a flat drawing for a machine cannot say.</summary>
internal static class WritableCheck
{
    // As many decimals as are written: what agrees in these is the same number in the file.
    private const int Decimals = 6;
    private const double MinRadius = 0.000001;

    public static void Refuse(DxfEntity entity)
    {
        if (entity.Invisible || entity.PaperSpace)
            throw Fault(entity, "it is hidden or on a paper sheet; only what is seen in the model is written");
        if (entity.Extrusion != DxfPoint.UnitZ)
            throw Fault(entity, "it does not face straight up; turn it into the drawing plane");
        if (entity.Colour is < 0 or > 256)
            throw Fault(entity, $"its colour is {entity.Colour}; it must be from 0 to 256");
        switch (entity)
        {
            case DxfLine line:
                Place(entity, line.Start, line.End);
                if (AreWrittenAlike(line.Start.X, line.End.X) && AreWrittenAlike(line.Start.Y, line.End.Y))
                    throw Fault(entity, "it has no length; leave it out");
                break;
            case DxfCircle circle:
                Place(entity, circle.Centre);
                Radius(entity, circle.Radius);
                break;
            case DxfArc arc:
                Place(entity, arc.Centre);
                Radius(entity, arc.Radius);
                Angles(arc);
                break;
            case DxfPointEntity point:
                Place(entity, point.Position);
                break;
            case DxfPolyline polyline:
                Polyline(polyline);
                break;
            default:
                throw Fault(entity, "entities of this type are not written; turn it into lines and arcs");
        }
    }

    private static void Polyline(DxfPolyline polyline)
    {
        if (polyline.Kind != DxfPolylineKind.Flat)
            throw Fault(polyline, "it is three-dimensional or a mesh; flatten it first");
        if (polyline.HasWidth)
            throw Fault(polyline, "it has a width, which is not written; use its centre line");
        foreach (var vertex in polyline.Vertices)
        {
            Place(polyline, new DxfPoint(vertex.X, vertex.Y, vertex.Z));
            Number(polyline, vertex.Bulge);
        }
    }

    private static void Place(DxfEntity entity, params ReadOnlySpan<DxfPoint> points)
    {
        foreach (var point in points)
        {
            Number(entity, point.X);
            Number(entity, point.Y);
            if (point.Z != 0)
                throw Fault(entity, Shown($"its height is {point.Z}; it must be 0, lay it into the drawing plane"));
        }
    }

    private static void Radius(DxfEntity entity, double radius)
    {
        Number(entity, radius);
        if (radius < MinRadius)
            throw Fault(entity, Shown($"its radius is {radius}; it must be at least {MinRadius:F6}"));
    }

    private static void Angles(DxfArc arc)
    {
        Number(arc, arc.StartAngle);
        Number(arc, arc.EndAngle);
        if (Direction(arc.StartAngle) == Direction(arc.EndAngle))
            throw Fault(arc, "it begins where it ends; use a circle for a whole turn");
    }

    private static bool AreWrittenAlike(double a, double b) => Math.Round(a, Decimals) == Math.Round(b, Decimals);

    private static double Direction(double degrees) => Math.Round(Angle.Normalised(degrees), Decimals) % 360;

    private static void Number(DxfEntity entity, double value)
    {
        if (!(Math.Abs(value) <= DxfWriteLimits.MaxCoordinate))
            throw Fault(entity, Shown($"it holds {value}; numbers must be finite and at most {DxfWriteLimits.MaxCoordinate}"));
    }

    private static string Shown(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static DxfException Fault(DxfEntity entity, string message) =>
        new($"{message} (layer {entity.Layer})", entity.Line, entity.Type);
}
