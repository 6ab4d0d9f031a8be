using System.Collections.Immutable;
using BuckGen.Cutting.Costs;

namespace BuckGen.Output.Reports;

/// <summary>Time and money by the shop's own rates.</summary>
/// <param name="Currency">The shop's currency; empty when not given.</param>
/// <param name="Materials">The stocks, the plastic last.</param>
/// <param name="Work">The work.</param>
/// <param name="MaterialByShare">Materials by what is used up.</param>
/// <param name="MaterialWhole">Materials bought whole.</param>
/// <param name="Minutes">Time of all work.</param>
/// <param name="WorkCost">Price of all work.</param>
/// <param name="Missing">Figures that the shop has not given; they are not in the sums.</param>
public sealed record CostReport(
    string Currency, ImmutableArray<MaterialReport> Materials, ImmutableArray<WorkReport> Work, double MaterialByShare,
    double MaterialWhole,
    double Minutes, double WorkCost, ImmutableArray<string> Missing)
{
    internal static CostReport Create(JobCost c) => new(
        c.Currency,
        [.. c.Materials
            .Select(m =>
                new MaterialReport(m.Name, m.Unit, m.Count, ReportNumber.Round(m.Share), ReportNumber.Round(m.UnitPrice),
                    ReportNumber.Round(m.ShareCost), ReportNumber.Round(m.WholeCost)))],
        [.. c.Work.Select(w =>
            new WorkReport(w.Name, ReportNumber.Round(w.Amount), w.Unit, ReportNumber.Round(w.Minutes),
                ReportNumber.Round(w.Cost)))],
        ReportNumber.Round(c.MaterialByShare), ReportNumber.Round(c.MaterialWhole), ReportNumber.Round(c.Minutes),
        ReportNumber.Round(c.WorkCost), c.Missing);
}

/// <summary>One material.</summary>
/// <param name="Name">The stock, or the plastic.</param>
/// <param name="Unit">What it is bought in: "board" or "sheet".</param>
/// <param name="Count">How many of them, whole.</param>
/// <param name="Share">How much of them is used up.</param>
/// <param name="UnitPrice">Price of a whole one; null when not given.</param>
/// <param name="ShareCost">Price of what is used up; null when not given.</param>
/// <param name="WholeCost">Price when all are bought whole; null when not given.</param>
public sealed record MaterialReport(string Name, string Unit, int Count, double Share, double? UnitPrice, double? ShareCost,
    double? WholeCost);

/// <summary>One kind of work.</summary>
/// <param name="Name">What is done.</param>
/// <param name="Amount">How much of it.</param>
/// <param name="Unit">What it is counted in.</param>
/// <param name="Minutes">How long it takes; null when not given.</param>
/// <param name="Cost">What it costs; null when not given.</param>
public sealed record WorkReport(string Name, double Amount, string Unit, double? Minutes, double? Cost);
