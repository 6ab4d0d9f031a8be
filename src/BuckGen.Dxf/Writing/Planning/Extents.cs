using BuckGen.Dxf.Entities;

namespace BuckGen.Dxf.Writing.Planning;

/// <summary>The box around everything drawn, arcs counted as they run and not by their ends.</summary>
internal readonly record struct Extents(double MinX, double MinY, double MaxX, double MaxY)
{
    private static Extents Nothing =>
        new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    public double Width => MaxX - MinX;

    public double Height => MaxY - MinY;

    public static Extents FromEntities(IEnumerable<DxfEntity> entities) =>
        entities.SelectMany(Points).Aggregate(Nothing, (box, p) => new(
            Math.Min(box.MinX, p.X), Math.Min(box.MinY, p.Y), Math.Max(box.MaxX, p.X), Math.Max(box.MaxY, p.Y)));

    /// <summary>Points that reach as far as the entity does in each direction.</summary>
    private static IEnumerable<DxfPoint> Points(DxfEntity entity) => entity switch
    {
        DxfLine line => [line.Start, line.End],
        DxfPointEntity point => [point.Position],
        DxfCircle circle => Quadrants(circle.Centre, circle.Radius),
        DxfArc arc => ArcPoints(arc),
        DxfPolyline polyline => polyline.Vertices.SelectMany((vertex, i) =>
            PiecePoints(vertex, polyline.Vertices[(i + 1) % polyline.Vertices.Length])),
        _ => throw new DxfException("it has no known extent", entity.Line, entity.Type),
    };

    private static DxfPoint[] Quadrants(DxfPoint centre, double radius) =>
    [
        new(centre.X + radius, centre.Y),
        new(centre.X, centre.Y + radius),
        new(centre.X - radius, centre.Y),
        new(centre.X, centre.Y - radius),
    ];

    private static IEnumerable<DxfPoint> ArcPoints(DxfArc arc)
    {
        var sweep = Angle.Sweep(arc);
        var reached = Quadrants(arc.Centre, arc.Radius).Where((_, i) => Angle.Normalised((90 * i) - arc.StartAngle) <= sweep);
        return reached.Append(At(arc, arc.StartAngle)).Append(At(arc, arc.EndAngle));
    }

    private static DxfPoint At(DxfArc arc, double degrees)
    {
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(degrees));
        return new(arc.Centre.X + (arc.Radius * cos), arc.Centre.Y + (arc.Radius * sin));
    }

    private static IEnumerable<DxfPoint> PiecePoints(DxfVertex start, DxfVertex end)
    {
        if (start.Bulge == 0)
            return [new(start.X, start.Y)];
        var (dx, dy, bulge) = (end.X - start.X, end.Y - start.Y, start.Bulge);
        var lift = (1 - (bulge * bulge)) / (4 * bulge);
        var centre = new DxfPoint(((start.X + end.X) / 2) - (dy * lift), ((start.Y + end.Y) / 2) + (dx * lift));
        var radius = Math.Sqrt((dx * dx) + (dy * dy)) * (1 + (bulge * bulge)) / (4 * Math.Abs(bulge));
        // An arc with a positive bulge lies to the right of its chord.
        var reached = Quadrants(centre, radius).Where(p => ((dx * (p.Y - start.Y)) - (dy * (p.X - start.X))) * bulge < 0);
        return reached.Append(new(start.X, start.Y));
    }
}
