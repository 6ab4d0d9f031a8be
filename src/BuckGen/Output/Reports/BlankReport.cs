using System.Collections.Immutable;
using BuckGen.Design.Forming;

namespace BuckGen.Output.Reports;

/// <summary>The blank.</summary>
/// <param name="Width">Width of the piece that is clamped.</param>
/// <param name="Height">Height of the piece that is clamped.</param>
/// <param name="OpeningWidth">Width of what lies free in the frame.</param>
/// <param name="OpeningHeight">Height of what lies free in the frame.</param>
/// <param name="Gap">From the buck to the frame.</param>
/// <param name="Plastic">The plastic's word; empty when not known.</param>
/// <param name="Gauge">Thickness before forming.</param>
/// <param name="MeanThickness">Mean thickness after forming, by areas.</param>
/// <param name="FormedArea">Area of the formed sheet.</param>
/// <param name="ArealDrawRatio">Formed area over flat area.</param>
/// <param name="LinearDrawRatio">A line across the part over its length on the flat sheet.</param>
/// <param name="HeightToWidth">Depth over the width of the narrowest part.</param>
/// <param name="GaugeForLeastWall">Gauge for the wanted wall, by areas; null when there is none.</param>
/// <param name="PlugWall">Mean thickness of a cavity's walls with a plug; null without one.</param>
/// <param name="Yields">Blanks from each sheet of the shop.</param>
public sealed record BlankReport(
    double Width, double Height, double OpeningWidth, double OpeningHeight, double Gap, string Plastic, double Gauge, double MeanThickness,
    double FormedArea, double ArealDrawRatio, double LinearDrawRatio, double HeightToWidth, double? GaugeForLeastWall, double? PlugWall, ImmutableArray<YieldReport> Yields)
{
    internal static BlankReport Of(Blank b, string plastic) => new(
        Rounded.Of(b.Width), Rounded.Of(b.Height), Rounded.Of(b.Opening.Width), Rounded.Of(b.Opening.Height), Rounded.Of(b.Gap), plastic,
        Rounded.Of(b.Gauge), Rounded.Of(b.MeanThickness), Rounded.Of(b.Surface.Formed), Rounded.Of(b.Ratios.Areal), Rounded.Of(b.Ratios.Linear),
        Rounded.Of(b.Ratios.HeightToWidth), Rounded.Of(b.GaugeForLeastWall), Rounded.Of(b.PlugWall), [.. b.Yields.Select(y => new YieldReport(y.Sheet.Width, y.Sheet.Height, y.Count, Rounded.Of(y.Share)))]);
}

/// <summary>Blanks from a sheet.</summary>
/// <param name="Width">Width of the sheet.</param>
/// <param name="Height">Height of the sheet.</param>
/// <param name="Count">Blanks it gives.</param>
/// <param name="Share">Share of it that becomes blanks, 0 to 1.</param>
public sealed record YieldReport(double Width, double Height, int Count, double Share);
