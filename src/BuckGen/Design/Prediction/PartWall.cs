using System.Collections.Immutable;

namespace BuckGen.Design.Prediction;

/// <summary>Where the thickness of a wall comes from.</summary>
public enum WallBasis
{
    /// <summary>The mean of the whole formed sheet, by areas.</summary>
    Mean,

    /// <summary>The prediction, at that place.</summary>
    Predicted,
}

/// <summary>The thickness of the part's wall from its flange to its face.</summary>
/// <param name="Basis">Where it comes from.</param>
/// <param name="Bands">The wall at rising heights; one band for a wall that is the same everywhere.</param>
/// <param name="Face">Thickness of the face, or of the floor of a cavity's part, mm.</param>
public sealed record PartWall(WallBasis Basis, ImmutableArray<WallBand> Bands, double Face)
{
    /// <summary>A wall of one thickness.</summary>
    internal static PartWall FromMean(double thickness) =>
        new(WallBasis.Mean, [new(0, thickness, thickness, thickness)], thickness);

    /// <summary>Thickness of the wall at a height, mm, square to the wall.</summary>
    /// <param name="height">From the plane of the flange toward the face, mm.</param>
    public double At(double height)
    {
        if (height <= Bands[0].Height) return Bands[0].Mean;
        for (var i = 1; i < Bands.Length; i++)
        {
            var (low, high) = (Bands[i - 1], Bands[i]);
            if (height <= high.Height)
                return low.Mean + (high.Mean - low.Mean) * (height - low.Height) / (high.Height - low.Height);
        }

        return Bands[^1].Mean;
    }

    /// <summary>The band whose middle lies nearest to a height.</summary>
    /// <param name="height">From the plane of the flange toward the face, mm.</param>
    public WallBand BandAt(double height) => Bands.MinBy(b => Math.Abs(b.Height - height))!;
}

/// <summary>The wall in a band of heights, all round the part.</summary>
/// <param name="Height">Middle of the band, from the plane of the flange toward the face, mm.</param>
/// <param name="Mean">Mean thickness, by areas, mm.</param>
/// <param name="Min">Thickness that 5 per cent of its area stay below, mm.</param>
/// <param name="Max">Thickness that 5 per cent of its area exceed, mm.</param>
public sealed record WallBand(double Height, double Mean, double Min, double Max);
