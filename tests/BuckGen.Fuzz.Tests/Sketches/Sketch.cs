using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>A closed path as it is drawn: corners, each with the bulge of the piece that leaves it.</summary>
internal sealed record SketchLoop(IReadOnlyList<(Vec2 Point, double Bulge)> Corners)
{
    public static SketchLoop Polygon(params IEnumerable<Vec2> points) => new([.. points.Select(p => (p, 0.0))]);

    public static SketchLoop Rectangle(Vec2 centre, double width, double height)
    {
        var (x, y) = (width / 2, height / 2);
        return Polygon(centre + new Vec2(-x, -y), centre + new Vec2(x, -y), centre + new Vec2(x, y), centre + new Vec2(-x, y));
    }

    /// <summary>A circle of two or more arcs.</summary>
    public static SketchLoop Circle(Vec2 centre, double radius, int arcs = 2) =>
        new([.. Enumerable.Range(0, arcs)
            .Select(i => (centre + Towards(2 * Math.PI * i / arcs) * radius, Math.Tan(Math.PI / 2 / arcs)))]);

    public static SketchLoop RegularPolygon(Vec2 centre, double radius, int corners, double turn) =>
        Polygon(Enumerable.Range(0, corners).Select(i => centre + Towards(turn + 2 * Math.PI * i / corners) * radius));

    public static Vec2 Towards(double angle) => new(Math.Cos(angle), Math.Sin(angle));

    /// <summary>Turned, enlarged, then moved.</summary>
    public SketchLoop Placed(double turn, double scale, Vec2 by) =>
        new([.. Corners.Select(c => (Turned(c.Point, turn) * scale + by, c.Bulge))]);

    private static Vec2 Turned(Vec2 p, double angle)
    {
        var along = Towards(angle);
        return new(p.X * along.X - p.Y * along.Y, p.X * along.Y + p.Y * along.X);
    }
}
