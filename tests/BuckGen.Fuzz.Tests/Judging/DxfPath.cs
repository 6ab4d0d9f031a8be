using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Judging;

/// <summary>A path as a DXF file has it.</summary>
/// <param name="Layer">Name of its layer.</param>
/// <param name="IsCircle">True for a CIRCLE.</param>
/// <param name="IsClosed">True for a circle and for a polyline that says so.</param>
/// <param name="Corners">Its vertices, each with its bulge; a circle has two.</param>
internal sealed record DxfPath(string Layer, bool IsCircle, bool IsClosed, IReadOnlyList<(Vec2 Point, double Bulge)> Corners)
{
    public static DxfPath Circle(string layer, Vec2 centre, double radius) =>
        new(layer, true, true, [(centre - new Vec2(radius, 0), 1), (centre + new Vec2(radius, 0), 1)]);

    public Vec2 Centre => (Corners[0].Point + Corners[1].Point) * 0.5;

    public double Radius => Corners[0].Point.DistanceTo(Corners[1].Point) / 2;

    public bool IsCutThrough => Layer is "CUT_OUTER" or "CUT_INNER";

    /// <summary>The path brought back from where it was put: <paramref name="map"/> moves and turns only.</summary>
    public DxfPath Before(Affine map) => this with
    {
        Corners = [.. Corners.Select(c => (Back(map, c.Point), map.Mirrors ? -c.Bulge : c.Bulge))],
    };

    public Shape AsShape() => new([Corners]);

    /// <summary>
    /// Area that the cuts leave, mm²: inside the outer edges, less the holes; which way each runs does not matter.
    /// </summary>
    public static double AreaLeft(IEnumerable<DxfPath> paths) => paths.Sum(p => p.Layer switch
    {
        "CUT_OUTER" => Math.Abs(p.AsShape().Area),
        "CUT_INNER" => -Math.Abs(p.AsShape().Area),
        _ => 0,
    });

    private static Vec2 Back(Affine map, Vec2 p)
    {
        var (x, y) = (p.X - map.E, p.Y - map.F);
        return new(map.A * x + map.B * y, map.C * x + map.D * y);
    }
}
