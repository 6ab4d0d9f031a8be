using BuckGen.Cutting.Boards;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>How the boards are cut.</summary>
/// <param name="Machine">"laser" or "router".</param>
/// <param name="Kerf">Full width of the cut that was allowed for; 0 for a router.</param>
/// <param name="Spacing">Minimum distance between parts.</param>
/// <param name="EdgeMargin">Minimum distance to the edge of the board.</param>
public sealed record CuttingReport(string Machine, double Kerf, double Spacing, double EdgeMargin)
{
    internal static CuttingReport Create(CuttingSpec s) =>
        new(Words.Format(s.Machine), ReportNumber.Round(2 * s.Compensation), ReportNumber.Round(s.Spacing),
            ReportNumber.Round(s.EdgeMargin));
}
