using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>
/// A male buck over a plan, with the draft of its walls all round, smooth or as a stack of upright layers, on a base at z = 0.
/// </summary>
/// <param name="plan">Distance of a place from the outline at the top, mm, negative inside, nowhere steeper than 1.</param>
/// <param name="height">Height of the buck, mm.</param>
/// <param name="draft">Draft of the walls, degrees.</param>
/// <param name="layer">Thickness of the layers, mm; null for a smooth wall.</param>
internal sealed class Frustum(Func<Vec2, double> plan, double height, double draft, double? layer = null) : ITool
{
    private readonly double slope = Math.Tan(draft * Math.PI / 180), cos = Math.Cos(draft * Math.PI / 180);

    public double SignedDistance(Vec3 point) => Math.Min(point.Z, Buck(plan(point.Plan), point.Z));

    // None of the parts rises faster than 1 in any direction, so neither do the greatest and the least of them: a true lower
    // bound.
    private double Buck(double side, double z)
    {
        if (layer is not { } thick) return Corner((side - (height - z) * slope) * cos, z - height);
        var least = double.PositiveInfinity;
        for (var top = height; top > 1e-9; top -= thick)
            least = Math.Min(least, Corner(side - (height - top) * slope, z - top));
        return least;
    }

    private static double Corner(double side, double above) => Math.Max(side, above);
}
