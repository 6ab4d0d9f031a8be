using System.Collections.Immutable;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Thickness;

/// <summary>The bands of thickness of a picture, and their legend.</summary>
/// <param name="Min">Lower limit of the thinnest band, mm.</param>
/// <param name="Max">Upper limit of the thickest band, mm.</param>
internal sealed record ThicknessScale(double Min, double Max)
{
    private const double BarWidth = 9, BarHeight = 4;

    /// <summary>
    /// Share of the points that may be thinner than the least: the film deep in sharp corners would take all colours for itself.
    /// </summary>
    private const double Beyond = 0.01;

    /// <summary>From the thinnest place that counts, or all but the last hundredth of the points, to the gauge.</summary>
    public static ThicknessScale ForPart(FormedPart part)
    {
        var usual = part.Points.Select(p => p.Thickness).Order().ElementAt((int)(Beyond * part.Points.Length));
        return new(Math.Min(Math.Min(usual, part.ThinnestOfSheet?.Thickness ?? usual), 0.95 * part.Gauge), part.Gauge);
    }

    /// <summary>Limit between two bands, mm.</summary>
    /// <param name="band">The upper one of the two.</param>
    public double Limit(int band) => Min + (Max - Min) * band / ThicknessColours.Count;

    /// <summary>Where a thickness lies between minimum and maximum, 0 to 1.</summary>
    private double Share(double thickness) => Math.Clamp((thickness - Min) / (Max - Min), 0, 1);

    /// <summary>The colour of a thickness, between bands, as red, green and blue from 0 to 1.</summary>
    public (double Red, double Green, double Blue) ColourOf(double thickness) => ThicknessColours.At(Share(thickness));

    /// <summary>The band of a thickness.</summary>
    public int BandOf(double thickness) => Math.Min((int)(Share(thickness) * ThicknessColours.Count), ThicknessColours.Count - 1);

    /// <summary>The legend: a bar of the bands with their limits below.</summary>
    /// <param name="corner">Its lower left corner.</param>
    public ImmutableArray<PictureItem> Legend(Vec2 corner)
    {
        var items = ImmutableArray.CreateBuilder<PictureItem>();
        for (var band = 0; band <= ThicknessColours.Count; band++)
        {
            var left = corner + new Vec2(band * BarWidth, 0);
            if (band < ThicknessColours.Count)
                items.Add(new PictureShape(
                    [new(Loop.Rectangle(new(left.X, left.Y, left.X + BarWidth, left.Y + BarHeight)).Segments, true)],
                    new(PictureColours.Grey, 0.15, ThicknessColours.ForBand(band))));
            if (band % 2 == 0)
                items.Add(new PictureText(left - new Vec2(0, 3.6),
                    Limit(band).ToString(Max < 0.3 ? "0.000" : "0.00", System.Globalization.CultureInfo.InvariantCulture),
                    TextLines.Height, TextAlign.Middle, PictureColours.Black));
        }
        items.Add(new PictureText(corner + new Vec2(ThicknessColours.Count * BarWidth + 8, 0.8), "mm; beyond: end colours",
            TextLines.Height, TextAlign.Start, PictureColours.Black));
        return items.ToImmutable();
    }
}
