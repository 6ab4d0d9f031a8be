using System.Collections.Immutable;
using BuckGen.Intake.Outlines;

namespace BuckGen.Output.Reports;

/// <summary>What was repaired in a drawing.</summary>
/// <param name="Kind">A short stable word.</param>
/// <param name="Count">How many places were repaired.</param>
/// <param name="MaxDistance">The maximum distance by which anything was moved or left out, mm; 0 when nothing moved.</param>
/// <param name="Message">The whole story in plain words.</param>
/// <param name="Places">Where.</param>
public sealed record RepairReport(string Kind, int Count, double MaxDistance, string Message, ImmutableArray<PlaceReport> Places)
{
    internal static RepairReport Create(Repair repair) => new(
        repair.Kind, repair.Count, ReportNumber.Round(repair.MaxDistance), repair.Message,
        [.. repair.Places.Select(PlaceReport.Create)]);
}
