using BuckGen.Design.Bucks;

namespace BuckGen.Output.Models.Meshing;

/// <summary>The heights at which the outlines of a drafted wall are needed to draw it.</summary>
internal static class WallLevels
{
    /// <summary>
    /// Farthest that a corner moves while the wall moves by one step, in steps; sharper corners are drawn step by step.
    /// </summary>
    private const double SharpestCorner = 8;

    /// <summary>The outlines, lowest first.</summary>
    public static IEnumerable<Level> Compute(StackedSolid solid, StackPlan plan)
    {
        var heights = solid.Shape.CloseHeights([.. plan.HeightsFrom(solid.Shape.Foot)]).ToArray();
        return LevelReduction.Apply([.. heights.Zip(heights.Skip(1)).SelectMany(p => From(p.First, p.Second)), At(heights[^1])],
            SharpestCorner * DraftedShape.SampleStep);

        Level At(double height) => new(height, solid.At(height));

        // Where a piece comes, goes, joins or parts, its end is drawn as closely as an arc.
        IEnumerable<Level> From(double low, double high)
        {
            var middle = (low + high) / 2;
            return Math.Abs(solid.Shape.OffsetAt(high) - solid.Shape.OffsetAt(low)) > SolidBuilder.ChordError
                && solid.At(low).Loops.Count() != solid.At(high).Loops.Count()
                    ? [.. From(low, middle), .. From(middle, high)]
                    : [At(low)];
        }
    }
}
