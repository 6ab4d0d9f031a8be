using BuckGen.Design.Bucks;

namespace BuckGen.Design.Venting;

/// <summary>How much air lies under the sheet when it has sealed on the plate.</summary>
internal static class TrappedAir
{
    private const double CubicMillimetresPerLitre = 1e6;

    /// <summary>The volume, L: an upper bound, since the sheet sags toward the buck before the vacuum is on.</summary>
    /// <remarks>
    /// Male: the box over the plate up to the top of the buck, less the wood. Female: the cavity. By the smooth walls, each layer
    /// by Simpson's rule.
    /// </remarks>
    public static double Litres(IReadOnlyList<LayerBlank> layers, StackedSolid solid)
    {
        var shape = solid.Shape;
        var inside = layers.Where(l => l.Role == LayerRole.Wall).Sum(l =>
            (shape.At(l.Bottom).Area + 4 * shape.At((l.Bottom + l.Top) / 2).Area + shape.At(l.Top).Area)
                * (l.Top - l.Bottom) / 6);
        var plate = layers.Last(l => l.Role == LayerRole.Base).Wood.Area;
        var air = solid.Kind == BuckKind.Male ? plate * (shape.Face - shape.Foot) - inside : inside;
        // Walls that lean out over the edge of the plate enclose more than the box over it.
        return Math.Max(0, air) / CubicMillimetresPerLitre;
    }
}
