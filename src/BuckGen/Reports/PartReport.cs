using System.Collections.Immutable;
using BuckGen.CutFiles;
using BuckGen.Designs;
using BuckGen.Forming;
using BuckGen.Quantities;
using BuckGen.Trimming;

namespace BuckGen.Reports;

/// <summary>How the buck was sized from the part.</summary>
/// <param name="Drawn">"buck", "inside" or "outside": what the drawing shows.</param>
/// <param name="Shrinkage">Shrinkage allowed for, per cent.</param>
/// <param name="WallAllowance">How far the outline was moved for the wall; negative inward.</param>
public sealed record SizingReport(string Drawn, double Shrinkage, double WallAllowance)
{
    internal static SizingReport Of(PartSizing s) => new(Words.Of(s.Drawn), Rounded.Of(s.Shrinkage), Rounded.Of(s.WallAllowance));
}

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
/// <param name="GaugeForLeastWall">Gauge for the wanted wall, by areas; null when none is asked for.</param>
/// <param name="Yields">Blanks from each sheet of the shop.</param>
public sealed record BlankReport(
    double Width, double Height, double OpeningWidth, double OpeningHeight, double Gap, string Plastic, double Gauge, double MeanThickness,
    double FormedArea, double ArealDrawRatio, double LinearDrawRatio, double HeightToWidth, double? GaugeForLeastWall, ImmutableArray<YieldReport> Yields)
{
    internal static BlankReport Of(Blank b, string plastic) => new(
        Rounded.Of(b.Width), Rounded.Of(b.Height), Rounded.Of(b.Opening.Width), Rounded.Of(b.Opening.Height), Rounded.Of(b.Gap), plastic,
        Rounded.Of(b.Gauge), Rounded.Of(b.MeanThickness), Rounded.Of(b.Surface.Formed), Rounded.Of(b.Ratios.Areal), Rounded.Of(b.Ratios.Linear),
        Rounded.Of(b.Ratios.HeightToWidth), Rounded.Of(b.GaugeForLeastWall), [.. b.Yields.Select(y => new YieldReport(y.Sheet.Width, y.Sheet.Height, y.Count, Rounded.Of(y.Share)))]);
}

/// <summary>Blanks from a sheet.</summary>
/// <param name="Width">Width of the sheet.</param>
/// <param name="Height">Height of the sheet.</param>
/// <param name="Count">Blanks it gives.</param>
/// <param name="Share">Share of it that becomes blanks, 0 to 1.</param>
public sealed record YieldReport(double Width, double Height, int Count, double Share);

/// <summary>The trim jig.</summary>
/// <param name="TrimHeight">Wanted height of the cut over the flange.</param>
/// <param name="Height">Height that the stock gives.</param>
/// <param name="RingLayers">Layers of the ring.</param>
/// <param name="CoreLayers">Layers of the core.</param>
public sealed record JigReport(double TrimHeight, double Height, int RingLayers, int CoreLayers)
{
    internal static JigReport Of(TrimJig j) => new(Rounded.Of(j.TrimHeight), Rounded.Of(j.Height), j.Ring.Length, j.Core.Length);
}

/// <summary>The flange template.</summary>
/// <param name="Offset">How far the template stays inside the trim line.</param>
/// <param name="TrimLength">Length of the trim line.</param>
public sealed record FlangeReport(double Offset, double TrimLength)
{
    internal static FlangeReport Of(FlangeTemplate f) => new(Rounded.Of(f.Offset), Rounded.Of(f.TrimLine.Perimeter));
}

/// <summary>The face panel.</summary>
/// <param name="Fit">Room between part and opening on every side.</param>
/// <param name="Width">Width of the panel.</param>
/// <param name="Height">Height of the panel.</param>
/// <param name="Openings">Openings cut in it.</param>
/// <param name="Inlays">Pieces that come loose.</param>
public sealed record PanelReport(double Fit, double Width, double Height, int Openings, int Inlays)
{
    internal static PanelReport Of(FacePanel p)
    {
        var panel = p.Panel.Region;
        return new(Rounded.Of(p.Fit), Rounded.Of(panel.Bounds.Width), Rounded.Of(panel.Bounds.Height), panel.HoleCount, p.Inlays?.Parts.Length ?? 0);
    }
}

/// <summary>A layer of a jig or panel.</summary>
/// <param name="Name">"RING", "CORE", "TEMPLATE", "NEST", "PANEL" or "INLAY".</param>
/// <param name="Number">1 for the lowest.</param>
/// <param name="Stock">Name of the sheet.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Bottom">Height of the lower face over the table.</param>
/// <param name="Top">Height of the upper face.</param>
/// <param name="File">Its DXF, or null when it was not written.</param>
/// <param name="Bounds">Bounds of its wood.</param>
public sealed record AccessoryReport(
    string Name, int Number, string Stock, double Thickness, double Bottom, double Top, string? File, BoundsReport Bounds)
{
    internal static IEnumerable<AccessoryReport> Of(BuckDesign design, ImmutableArray<string> files) => design.Accessories.Select(l => new AccessoryReport(
        l.Name, l.Number, l.Stock.Name, Rounded.Of(l.Thickness), Rounded.Of(l.Bottom), Rounded.Of(l.Top),
        Summary.Listed(CutFilePaths.Accessory(l), files), BoundsReport.Of(l.Region.Bounds)));
}
