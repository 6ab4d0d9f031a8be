using NetTopologySuite.Algorithm.Construct;

namespace BuckGen.Geometry.Polygonal;

/// <summary>The largest circle inside a piece of the plane.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Its radius, mm.</param>
internal sealed record LargestCircle(Vec2 Centre, double Radius)
{
    /// <summary>The radius is found to this share of the piece's size.</summary>
    private const double Share = 1e-4;

    /// <summary>The largest circle in an island.</summary>
    public static LargestCircle In(Island island)
    {
        var size = island.Outer.Bounds.Diagonal;
        var circle = new MaximumInscribedCircle(PolygonConversion.ToGeometry(new([island]), size * Share), size * Share);
        var centre = circle.GetCenter();
        return new(new(centre.X, centre.Y), circle.GetRadiusLine().Length);
    }
}
