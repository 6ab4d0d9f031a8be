using System.Globalization;
using BuckGen.Catalogs;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the catalog with the sources of its figures.</summary>
internal static class CatalogPrinter
{
    public static void Print(IAnsiConsole console, Catalog catalog)
    {
        var stock = new Table().Border(TableBorder.Simple)
            .AddColumns(new("Sheet"), new TableColumn("Real, mm").RightAligned(), new("Limits, mm"), new("Source"));
        foreach (var s in catalog.Stock)
            stock.AddRow(s.Id, Text($"{s.Thickness:0.0}"), Text($"{s.Lower:0.0} to {s.Upper:0.0}"), Markup.Escape(s.Source));
        console.Write(stock);
        console.WriteLine("Measure your own sheets: the stack is as high as they really are.");

        var plastics = new Table().Border(TableBorder.Simple)
            .AddColumns(new("Plastic"), new("Shrinks, %"), new TableColumn("Draft, male").RightAligned(), new("Caution"), new("Source"));
        foreach (var p in catalog.Plastic)
            plastics.AddRow(p.Id, Text($"{p.Shrinkage[0]:0.0} to {p.Shrinkage[1]:0.0}"), Text($"{p.DraftMale:0.#} deg"),
                Markup.Escape(p.Caution), Markup.Escape(p.Source));
        console.Write(plastics);
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
