using BuckGen.Design.Trimming;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>The flange template.</summary>
/// <param name="Offset">How far the template stays inside the trim line.</param>
/// <param name="TrimLength">Length of the trim line.</param>
/// <param name="Rim">"offset", "rectangle" or "drawn".</param>
/// <param name="Narrowest">Width of the flange where it is narrowest.</param>
public sealed record FlangeReport(double Offset, double TrimLength, string Rim, double Narrowest)
{
    internal static FlangeReport Create(FlangeTemplate f) =>
        new(ReportNumber.Round(f.Offset), ReportNumber.Round(f.TrimLine.Perimeter), Words.Format(f.Rim),
            ReportNumber.Round(f.Narrowest.Width));
}
