using System.Globalization;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Geometry;

namespace BuckGen.Intake.Dxf;

/// <summary>
/// Brings entities down to the XY plane; those that do not lie level are refused, for seen from above they lie.
/// </summary>
internal static class FlatPlane
{
    private const double LevelWithin = 1e-9;

    /// <summary>From the plane an entity was drawn in to the drawing.</summary>
    public static Affine MapOf(DxfEntity entity)
    {
        var plane = DxfPlane.FromExtrusion(entity.Extrusion);
        if (Math.Abs(plane.ZAxis.Z) < 1 - LevelWithin)
            throw new DxfException("the outline is not in the XY plane (its extrusion is tilted); draw it in plan", entity.Line,
                entity.Type);
        return new(plane.XAxis.X, plane.XAxis.Y, plane.YAxis.X, plane.YAxis.Y, 0, 0);
    }

    /// <summary>Refuses points of different heights.</summary>
    public static void RequireLevel(DxfEntity entity, IEnumerable<double> heights)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var z in heights) (low, high) = (Math.Min(low, z), Math.Max(high, z));
        if (high - low > 1e-6 * Math.Max(1, Math.Max(Math.Abs(low), Math.Abs(high))))
            throw new DxfException(string.Create(CultureInfo.InvariantCulture,
                $"the outline is not in the XY plane (z from {low:0.####} to {high:0.####}); draw it in plan"), entity.Line,
                entity.Type);
    }
}
