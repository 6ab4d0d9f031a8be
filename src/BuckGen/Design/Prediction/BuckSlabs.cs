using BuckGen.Design.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Design.Prediction;

/// <summary>The designed wood as slabs: plates and walls, with the steps of the layers or without.</summary>
internal static class BuckSlabs
{
    /// <summary>
    /// Farthest that the wall moves within a slab, mm; a mitred right angle may stand aside by a tenth of it, a sharper corner by
    /// more.
    /// </summary>
    private const double LargestMove = 1;

    /// <summary>The slabs, lowest first.</summary>
    /// <param name="solid">The drafted wood.</param>
    /// <param name="layers">The layers as they are cut.</param>
    /// <param name="stepped">True for the layers with their steps, false for the wall after sanding or filling.</param>
    public static IEnumerable<WoodSlab> Of(StackedSolid solid, IReadOnlyList<Layer> layers, bool stepped)
    {
        foreach (var layer in layers.Where(l => stepped || l.Role != LayerRole.Wall)) yield return new(layer.Bottom, layer.Top, layer.Region, layer.Region);
        if (stepped) yield break;
        var shape = solid.Shape;
        double[] heights = [.. shape.CloseHeights([.. layers.Where(l => l.Role == LayerRole.Wall).Select(l => l.Bottom).Append(shape.Face)])];
        var plans = Array.ConvertAll(heights, solid.At);
        for (int low = 0, high = 1; high < heights.Length; high++)
        {
            var isLast = high + 1 == heights.Length;
            var moves = Math.Abs(shape.OffsetAt(isLast ? heights[high] : heights[high + 1]) - shape.OffsetAt(heights[low]));
            // Where pieces come and go the outlines follow each other closely.
            var isCalm = !isLast && moves <= LargestMove && Count(plans[high + 1]) == Count(plans[low]);
            if (isCalm) continue;
            yield return new(heights[low], heights[high], plans[low], plans[high]);
            low = high;
        }
    }

    private static int Count(Region region) => region.Loops.Count();
}
