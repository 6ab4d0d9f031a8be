using System.Globalization;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Printing;

/// <summary>Prints time and money of a job.</summary>
internal static class CostPrinter
{
    public static void Print(Printer printer, CostReport? cost)
    {
        if (cost is null) return;
        printer.Table(
            [new("Cost and time"), new("Amount", AlignRight: true), new("Minutes", AlignRight: true),
                new(CostRows.PriceHeading(cost), AlignRight: true)],
            [
                .. CostRows.Create(cost),
                ["Together", "", Text($"{cost.Minutes:0}"), CostRows.Money(cost.MaterialByShare + cost.WorkCost)],
            ]);
        printer.Line(
            Text($"With whole boards and sheets instead of shares: {CostRows.Money(cost.MaterialWhole + cost.WorkCost)}"));
        if (cost.Missing.Length > 0) printer.Line($"Not in the sums, because not given: {string.Join(", ", cost.Missing)}");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
