using BuckGen.Design.Bucks;
using BuckGen.Geometry;

namespace BuckGen.Design.Forming;

/// <summary>How far the sheet is drawn.</summary>
/// <param name="Areal">Formed area over the area of the flat sheet used; its reciprocal is the mean thickness fraction.</param>
/// <param name="Linear">Length of a line across the part, down one wall and up the other, over its length on the flat
/// sheet.</param>
/// <param name="HeightToWidth">Depth over the width of the narrowest part, measured as the largest circle it holds.</param>
/// <remarks>
/// Source: SPE Thermoforming Division, "The Ubiquitous Draw Ratio", Thermoforming Quarterly 24(4), 2005. The height-to-width
/// ratio is kept there for round parts; the largest circle inside is our reading for other shapes.
/// </remarks>
public sealed record DrawRatios(double Areal, double Linear, double HeightToWidth)
{
    /// <summary>The ratios of a drafted solid.</summary>
    /// <param name="surface">Its areas.</param>
    /// <param name="shape">The solid.</param>
    /// <param name="kind">Male or female.</param>
    /// <param name="depth">Depth of the buck, mm.</param>
    /// <param name="plates">Height of the plates under a male buck that go through the frame, mm.</param>
    /// <param name="openingAcross">Clear opening of the frame along the line, mm.</param>
    internal static DrawRatios Compute(FormedSurface surface, DraftedShape shape, BuckKind kind, double depth,
        double plates, double openingAcross)
    {
        var walls = 2 * (shape.Side.Length(depth) + plates);
        var (foot, face) = (Across(shape.At(shape.Foot)), Across(shape.At(shape.Face)));
        var linear = kind == BuckKind.Male ? (openingAcross - foot + face + walls) / openingAcross : (foot + walls) / face;
        var widest = kind == BuckKind.Male ? shape.At(shape.Foot) : shape.At(shape.Face);
        var narrowest = widest.Islands.Min(i => LargestCircle.In(i).Radius) * 2;
        return new(surface.ArealRatio, linear, depth / narrowest);
    }

    /// <summary>The shorter side of a region's bounds, mm.</summary>
    private static double Across(Region region) => region.IsEmpty ? 0 : Math.Min(region.Bounds.Width, region.Bounds.Height);
}
