using System.Globalization;
using BuckGen.Reports;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>Prints time and money of a job.</summary>
internal static class CostPrinter
{
    public static void Print(IAnsiConsole console, CostReport? cost)
    {
        if (cost is null) return;
        var table = new Table().Border(TableBorder.Simple)
            .AddColumns(new("Cost and time"), new TableColumn("Amount").RightAligned(), new TableColumn("Minutes").RightAligned(),
                new TableColumn(Markup.Escape(cost.Currency.Length > 0 ? cost.Currency : "Price")).RightAligned());
        foreach (var m in cost.Materials)
            table.AddRow(Markup.Escape(m.Name), Text($"{m.Share:0.00} of {m.Sheets} sheet{(m.Sheets == 1 ? "" : "s")}"), "", Money(m.ShareCost));
        foreach (var w in cost.Work)
            table.AddRow(Markup.Escape(w.Name), w.Unit == "mm" ? Text($"{w.Amount / 1000:0.0} m") : Text($"{w.Amount:0} {w.Unit}"), w.Minutes is { } minutes ? Text($"{minutes:0.0}") : "?", Money(w.Cost));
        table.AddRow("Together", "", Text($"{cost.Minutes:0}"), Money(cost.MaterialByShare + cost.WorkCost));
        console.Write(table);
        console.WriteLine(Text($"With whole sheets instead of shares: {Money(cost.MaterialWhole + cost.WorkCost)}"));
        if (cost.Missing.Length > 0) console.WriteLine($"Not in the sums, since nobody said: {string.Join(", ", cost.Missing)}");
    }

    private static string Money(double? sum) => sum is { } s ? Text($"{s:0.00}") : "?";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
