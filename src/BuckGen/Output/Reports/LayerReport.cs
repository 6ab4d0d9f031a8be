using System.Collections.Immutable;
using System.Text.Json.Serialization;
using BuckGen.Cutting.CutFiles;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>One layer.</summary>
/// <param name="Number">1 for the lowest.</param>
/// <param name="Role">"wall" or "base".</param>
/// <param name="Stock">Name of the stock.</param>
/// <param name="Thickness">Thickness.</param>
/// <param name="Bottom">Height of the lower face.</param>
/// <param name="Top">Height of the upper face.</param>
/// <param name="File">The layer's DXF, or null when it was not written.</param>
/// <param name="Area">Area of its wood, dowel holes not taken off.</param>
/// <param name="Islands">Number of separate pieces.</param>
/// <param name="Holes">Number of holes, dowels not counted.</param>
/// <param name="CutLength">Length of its nominal edges and dowel holes; what the machine runs differs by the kerf.</param>
/// <param name="Bounds">Bounds of its wood.</param>
public sealed record LayerReport(
    int Number, string Role, string Stock, double Thickness, double Bottom, double Top, string? File, double Area,
    int Islands, int Holes, double CutLength, BoundsReport Bounds)
{
    /// <summary>Radius to which its upper edge is rounded when the stack is glued; null for a layer whose edge stays.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? EdgeRadius { get; init; }

    internal static LayerReport Create(BuckDesign design, Layer layer, ImmutableArray<string> files)
    {
        var (region, dowels) = (layer.Region, layer.Parts.SelectMany(p => p.Dowels));
        var cut = region.Perimeter + dowels.Sum(d => Math.PI * d.Diameter);
        return new(
            layer.Number, Words.Format(layer.Role), layer.Stock.Name, ReportNumber.Round(layer.Thickness),
            ReportNumber.Round(layer.Bottom),
            ReportNumber.Round(layer.Top), Summary.Listed(CutFilePaths.Layer(layer.Number), files),
            ReportNumber.Round(region.Area),
            region.Islands.Length, region.HoleCount, ReportNumber.Round(cut), BoundsReport.Create(region.Bounds))
        {
            EdgeRadius = design.IsRounded(layer) ? ReportNumber.Round(design.Spec.EdgeRadius) : null,
        };
    }
}
