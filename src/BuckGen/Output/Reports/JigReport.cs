using BuckGen.Design.Trimming;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>The trim jig.</summary>
/// <param name="TrimHeight">Wanted height of the cut over what the ring stands on.</param>
/// <param name="Height">Height that the stock gives, from the same face.</param>
/// <param name="HeightFrom">"underside" or "upper": the face of the flange from which both are measured.</param>
/// <param name="RingLayers">Layers of the ring.</param>
/// <param name="CoreLayers">Layers of the core.</param>
public sealed record JigReport(double TrimHeight, double Height, string HeightFrom, int RingLayers, int CoreLayers)
{
    internal static JigReport Create(TrimJig j) =>
        new(ReportNumber.Round(j.TrimHeight), ReportNumber.Round(j.Height), Words.Format(j.HeightFrom), j.Ring.Length,
            j.Core.Length);
}
