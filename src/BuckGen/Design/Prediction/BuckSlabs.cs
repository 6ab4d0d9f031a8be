using BuckGen.Design.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Design.Prediction;

/// <summary>The designed wood as slabs: plates and walls, with or without the steps of the layers.</summary>
internal static class BuckSlabs
{
    /// <summary>
    /// Largest shift of the wall within a slab, mm. A mitred right angle may be off by a tenth of it, a sharper corner by more.
    /// </summary>
    private const double MaxWallShift = 1;

    /// <summary>The slabs, lowest first.</summary>
    /// <param name="solid">The drafted wood.</param>
    /// <param name="layers">The layers as they are cut.</param>
    /// <param name="stepped">True for the layers with their steps, false for the wall after sanding or filling.</param>
    public static IEnumerable<WoodSlab> FromLayers(StackedSolid solid, IReadOnlyList<Layer> layers, bool stepped)
    {
        foreach (var layer in layers.Where(l => stepped || l.Role != LayerRole.Wall))
            yield return new(layer.Bottom, layer.Top, layer.Region, layer.Region);
        if (stepped) yield break;
        var shape = solid.Shape;
        double[] heights =
            [.. shape.CloseHeights([.. layers.Where(l => l.Role == LayerRole.Wall).Select(l => l.Bottom).Append(shape.Face)])];
        var plans = Array.ConvertAll(heights, solid.At);
        var bends = shape.Side.StraightDraft is null ? shape.WithBends([shape.Foot, shape.Face]).ToHashSet() : [];
        for (int lower = 0, upper = 1; upper < heights.Length; upper++)
        {
            var isLast = upper + 1 == heights.Length;
            var wallShift =
                Math.Abs(shape.OffsetAt(isLast ? heights[upper] : heights[upper + 1]) - shape.OffsetAt(heights[lower]));
            // Slabs are thin at heights where pieces of the plan appear or vanish.
            // A bend ends a slab, and a ledge is the top of one.
            var canExtend = !isLast && !bends.Contains(heights[upper]) && wallShift <= MaxWallShift
                && Count(plans[upper + 1]) == Count(plans[lower]);
            if (canExtend) continue;
            if (!shape.Side.PieceAt(shape.FromFlange((heights[lower] + heights[upper]) / 2)).IsLedge)
                yield return new(heights[lower], heights[upper], plans[lower], plans[upper]);
            lower = upper;
        }
    }

    private static int Count(Region region) => region.Loops.Count();
}
