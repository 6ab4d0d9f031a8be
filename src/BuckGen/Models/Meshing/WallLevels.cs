using BuckGen.Bucks;

namespace BuckGen.Models.Meshing;

/// <summary>The heights at which the outlines of a drafted wall are needed to draw it.</summary>
internal static class WallLevels
{
    /// <summary>The outlines, lowest first.</summary>
    public static IEnumerable<Level> Of(StackedSolid solid, StackPlan plan) =>
        solid.Shape.CloseHeights([.. plan.HeightsFrom(solid.Shape.Foot)]).Select(h => new Level(h, solid.At(h)));
}
