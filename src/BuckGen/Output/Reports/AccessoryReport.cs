using System.Collections.Immutable;
using BuckGen.Cutting.CutFiles;
using BuckGen.Design;

namespace BuckGen.Output.Reports;

/// <summary>A layer of a jig or panel.</summary>
/// <param name="Name">"RING", "CORE", "BED", "TEMPLATE", "NEST", "PANEL", "INLAY" or "REGISTER".</param>
/// <param name="Number">1 for the lowest.</param>
/// <param name="Stock">Name of the stock.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Bottom">Height of the lower face over what the jig stands on; below 0 for the bed.</param>
/// <param name="Top">Height of the upper face over the same.</param>
/// <param name="File">Its DXF, or null when it was not written.</param>
/// <param name="MarkedOnBack">True when its file shows it from the back, to be cut with its face down.</param>
/// <param name="Bounds">Bounds of its wood.</param>
public sealed record AccessoryReport(
    string Name, int Number, string Stock, double Thickness, double Bottom, double Top, string? File, bool MarkedOnBack,
    BoundsReport Bounds)
{
    internal static IEnumerable<AccessoryReport> Create(BuckDesign design, ImmutableArray<string> files) =>
        design.Accessories.Select(l => new AccessoryReport(
        l.Name, l.Number, l.Stock.Name, ReportNumber.Round(l.Thickness), ReportNumber.Round(l.Bottom), ReportNumber.Round(l.Top),
        Summary.Listed(CutFilePaths.Accessory(l), files), l.MarkedOnBack,
        BoundsReport.Create(l.Region.Bounds)));
}
