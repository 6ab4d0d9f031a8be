using BuckGen.Design.Bucks;

namespace BuckGen.Design.Venting;

/// <summary>How much air lies under the sheet when it has sealed on the plate.</summary>
internal static class TrappedAir
{
    private const double CubicMillimetresPerLitre = 1e6;

    /// <summary>The volume, L: an upper bound, since the sheet sags toward the buck before the vacuum is on.</summary>
    /// <remarks>
    /// Male: the box over the plate up to the top of the buck, less the wood. Female: the cavity. By the smooth walls, each layer
    /// by Simpson's rule, in pieces where the side bends.
    /// </remarks>
    public static double Litres(IReadOnlyList<LayerBlank> layers, StackedSolid solid)
    {
        var shape = solid.Shape;
        var inside = layers.Where(l => l.Role == LayerRole.Wall).Sum(l =>
        {
            double[] heights = [.. shape.WithBends([l.Bottom, l.Top])];
            return heights.Zip(heights.Skip(1), Between).Sum();
        });
        var plate = layers.Last(l => l.Role == LayerRole.Base).Wood.Area;
        var air = solid.Kind == BuckKind.Male ? plate * (shape.Face - shape.Foot) - inside : inside;
        // Walls that lean out over the edge of the plate enclose more than the box over it.
        return Math.Max(0, air) / CubicMillimetresPerLitre;

        double Between(double low, double high) =>
            (shape.At(low).Area + 4 * shape.At((low + high) / 2).Area + shape.At(high).Area) * (high - low) / 6;
    }
}
