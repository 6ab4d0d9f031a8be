using System.Globalization;

namespace BuckGen.Output.Reports;

/// <summary>The lines of a cost as console and page show them: name, amount, minutes, price.</summary>
internal static class CostRows
{
    /// <summary>What the last column is called: the currency, where it is known.</summary>
    public static string PriceHeading(CostReport cost) => cost.Currency.Length > 0 ? cost.Currency : "Price";

    /// <summary>A line for each material, then for each kind of work.</summary>
    public static IEnumerable<string[]> Create(CostReport cost) =>
    [
        .. cost.Materials.Select(m => (string[])
            [m.Name, Text($"{m.Share:0.00} of {m.Count} {m.Unit}{(m.Count == 1 ? "" : "s")}"), "", Money(m.ShareCost)]),
        .. cost.Work.Select(w => (string[])[w.Name, Amount(w), w.Minutes is { } m ? Text($"{m:0.0}") : "?", Money(w.Cost)]),
    ];

    /// <summary>A sum of money; a question mark where it is not known.</summary>
    public static string Money(double? sum) => sum is { } s ? Text($"{s:0.00}") : "?";

    private static string Amount(WorkReport work) =>
        work.Unit == "mm" ? Text($"{work.Amount / 1000:0.0} m") : Text($"{work.Amount:0} {work.Unit}");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
