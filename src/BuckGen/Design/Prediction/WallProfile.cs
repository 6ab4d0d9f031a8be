using System.Collections.Immutable;

namespace BuckGen.Design.Prediction;

/// <summary>A triangle of the part, as its wall is measured.</summary>
/// <param name="Height">Height of its middle, from the plane of the flange toward the face, mm.</param>
/// <param name="Slope">Angle between the triangle and the plane of the flange, degrees.</param>
/// <param name="Area">mm².</param>
/// <param name="Thickness">mm.</param>
internal readonly record struct WallSample(double Height, double Slope, double Area, double Thickness);

/// <summary>Sorts the triangles of a predicted part into wall and face, and the wall into bands.</summary>
internal static class WallProfile
{
    private const int BandCount = 12;

    /// <summary>Share of a band's area that is left out at either end of its range: single triangles say little.</summary>
    private const double TailShare = 0.05;

    /// <summary>The wall; null when no triangle lies on the wall or none on the face.</summary>
    /// <param name="samples">The triangles of the part.</param>
    /// <param name="depth">From the plane of the flange to the face, mm.</param>
    /// <param name="draft">Slope of the wall next to the face away from upright, degrees.</param>
    public static PartWall? Create(IEnumerable<WallSample> samples, double depth, double draft)
    {
        // Half-way between the slope of the wall and that of the face.
        var minSlope = (90 - draft) / 2;
        var band = depth / BandCount;
        var (wall, flat) = (new List<WallSample>(), new List<WallSample>());
        foreach (var sample in samples)
            if (sample.Slope >= minSlope) wall.Add(sample);
            else if (sample.Height > depth - band) flat.Add(sample);
        if (wall.Count == 0 || flat.Count == 0) return null;
        ImmutableArray<WallBand> bands =
        [
            .. wall.GroupBy(s => Math.Clamp((int)(s.Height / band), 0, BandCount - 1)).OrderBy(g => g.Key)
                .Select(g => Band((g.Key + 0.5) * band, [.. g.OrderBy(s => s.Thickness)])),
        ];
        return new(WallBasis.Predicted, bands, Mean(flat));
    }

    private static WallBand Band(double height, WallSample[] rising) =>
        new(height, Mean(rising), Quantile(rising, TailShare), Quantile(rising, 1 - TailShare));

    /// <summary>Thickness that a share of the area does not exceed, mm.</summary>
    /// <param name="rising">Triangles in the order of their thickness, at least one.</param>
    /// <param name="share">The share.</param>
    public static double Quantile(WallSample[] rising, double share)
    {
        var left = share * rising.Sum(s => s.Area);
        foreach (var sample in rising)
            if ((left -= sample.Area) <= 0) return sample.Thickness;
        return rising[^1].Thickness;
    }

    private static double Mean(IEnumerable<WallSample> samples)
    {
        var (volume, area) = (0.0, 0.0);
        foreach (var s in samples) (volume, area) = (volume + s.Area * s.Thickness, area + s.Area);
        return volume / area;
    }
}
