using BuckGen.Findings;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>Something to know before cutting.</summary>
/// <param name="Number">Its number on the page and on the plan, from 1, shared by all findings of its kind.</param>
/// <param name="Id">A short stable word.</param>
/// <param name="Severity">"note", "warning" or "error".</param>
/// <param name="Message">What is so.</param>
/// <param name="X">Place in the plan.</param>
/// <param name="Y">Place in the plan.</param>
/// <param name="Z">Height above the bottom of the stack.</param>
/// <param name="Value">The measured value.</param>
/// <param name="Limit">The limit.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Remedy">What can be done.</param>
/// <param name="Silenced">Why the maker accepts it; null when it is not silenced.</param>
public sealed record FindingReport(
    int Number, string Id, string Severity, string Message, double? X, double? Y, double? Z, double? Value, double? Limit,
    string Source, string Remedy, string? Silenced)
{
    internal static FindingReport Create(Finding f) => new(
        f.Number, f.Id, Words.Format(f.Severity), f.Message, ReportNumber.Round(f.Place?.X), ReportNumber.Round(f.Place?.Y),
        ReportNumber.Round(f.Height),
        ReportNumber.Round(f.Value), ReportNumber.Round(f.Limit), f.Source, f.Remedy, f.Silenced);
}
