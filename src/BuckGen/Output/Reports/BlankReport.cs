using System.Collections.Immutable;
using BuckGen.Design.Forming;

namespace BuckGen.Output.Reports;

/// <summary>The blank.</summary>
/// <param name="Width">Width of the piece that is clamped.</param>
/// <param name="Height">Height of the piece that is clamped.</param>
/// <param name="OpeningWidth">Width of what lies free in the frame.</param>
/// <param name="OpeningHeight">Height of what lies free in the frame.</param>
/// <param name="Gap">From the buck to the frame; null when it does not fit.</param>
/// <param name="BaseGap">From all that stands under the sheet to the frame; null when it does not go through.</param>
/// <param name="Missing">How much it is too large for the frame; 0 when it goes through.</param>
/// <param name="Turned">True when the frame lies turned by a quarter over the drawing.</param>
/// <param name="Plastic">The plastic's word; empty when not known.</param>
/// <param name="Gauge">Thickness before forming.</param>
/// <param name="MeanThickness">Mean thickness after forming, by areas: of part and skirt, in a cavity of the part.</param>
/// <param name="FormedArea">Area of the formed sheet.</param>
/// <param name="ArealDrawRatio">Formed area over flat area.</param>
/// <param name="LinearDrawRatio">A line across the part over its length on the flat sheet.</param>
/// <param name="HeightToWidth">Depth over the width of the narrowest part.</param>
/// <param name="GaugeForMinWall">Gauge for the wanted wall, by areas; null when there is none.</param>
/// <param name="PlugWall">Mean thickness of a cavity's walls with a plug; null without one.</param>
/// <param name="Yields">Blanks from each sheet of the shop.</param>
public sealed record BlankReport(
    double Width, double Height, double OpeningWidth, double OpeningHeight, double? Gap, double? BaseGap, double Missing,
    bool Turned, string Plastic, double Gauge,
    double MeanThickness,
    double FormedArea, double ArealDrawRatio, double LinearDrawRatio, double HeightToWidth, double? GaugeForMinWall,
    double? PlugWall, ImmutableArray<YieldReport> Yields)
{
    internal static BlankReport Create(Blank b, string plastic) => new(
        ReportNumber.Round(b.Width), ReportNumber.Round(b.Height), ReportNumber.Round(b.Opening.Width),
        ReportNumber.Round(b.Opening.Height), Fitting(b.Gap), Fitting(b.BaseGap),
        ReportNumber.Round(Math.Max(0, -2 * b.BaseGap)), b.IsTurned, plastic,
        ReportNumber.Round(b.Gauge), ReportNumber.Round(b.MeanThickness), ReportNumber.Round(b.Surface.Formed),
        ReportNumber.Round(b.Ratios.Areal), ReportNumber.Round(b.Ratios.Linear),
        ReportNumber.Round(b.Ratios.HeightToWidth), ReportNumber.Round(b.GaugeForMinWall), ReportNumber.Round(b.PlugWall),
        [.. b.Yields.Select(y => new YieldReport(y.Sheet.Width, y.Sheet.Height, y.Count, ReportNumber.Round(y.Share)))]);

    private static double? Fitting(double gap) => gap < 0 ? null : ReportNumber.Round(gap);
}

/// <summary>Blanks from a sheet.</summary>
/// <param name="Width">Width of the sheet.</param>
/// <param name="Height">Height of the sheet.</param>
/// <param name="Count">Blanks it gives.</param>
/// <param name="Share">Share of it that becomes blanks, 0 to 1.</param>
public sealed record YieldReport(double Width, double Height, int Count, double Share);
