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
                new(cost.Currency.Length > 0 ? cost.Currency : "Price", AlignRight: true)],
            [
                .. cost.Materials
                    .Select(m =>
                        (string[])[m.Name, Text($"{m.Share:0.00} of {m.Count} {m.Unit}{(m.Count == 1 ? "" : "s")}"), "",
                            Money(m.ShareCost)]),
                .. cost.Work
                    .Select(w =>
                        (string[])[w.Name, w.Unit == "mm" ? Text($"{w.Amount / 1000:0.0} m") : Text($"{w.Amount:0} {w.Unit}"),
                            w.Minutes is { } minutes ? Text($"{minutes:0.0}") : "?", Money(w.Cost)]),
                ["Together", "", Text($"{cost.Minutes:0}"), Money(cost.MaterialByShare + cost.WorkCost)],
            ]);
        printer.Line(Text($"With whole boards and sheets instead of shares: {Money(cost.MaterialWhole + cost.WorkCost)}"));
        if (cost.Missing.Length > 0) printer.Line($"Not in the sums, because not given: {string.Join(", ", cost.Missing)}");
    }

    private static string Money(double? sum) => sum is { } s ? Text($"{s:0.00}") : "?";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
