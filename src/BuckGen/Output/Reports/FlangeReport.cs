using BuckGen.Design.Trimming;

namespace BuckGen.Output.Reports;

/// <summary>The flange template.</summary>
/// <param name="Offset">How far the template stays inside the trim line.</param>
/// <param name="TrimLength">Length of the trim line.</param>
public sealed record FlangeReport(double Offset, double TrimLength)
{
    internal static FlangeReport Create(FlangeTemplate f) =>
        new(ReportNumber.Round(f.Offset), ReportNumber.Round(f.TrimLine.Perimeter));
}
