using BuckGen.Design.Trimming;

namespace BuckGen.Output.Reports;

/// <summary>The trim jig.</summary>
/// <param name="TrimHeight">Wanted height of the cut over the flange.</param>
/// <param name="Height">Height that the stock gives.</param>
/// <param name="RingLayers">Layers of the ring.</param>
/// <param name="CoreLayers">Layers of the core.</param>
public sealed record JigReport(double TrimHeight, double Height, int RingLayers, int CoreLayers)
{
    internal static JigReport Create(TrimJig j) =>
        new(ReportNumber.Round(j.TrimHeight), ReportNumber.Round(j.Height), j.Ring.Length, j.Core.Length);
}
