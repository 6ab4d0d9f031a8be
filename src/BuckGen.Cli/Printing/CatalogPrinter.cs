using BuckGen.Catalogs;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the main figures of the catalog, with their sources below.</summary>
internal static class CatalogPrinter
{
    private static readonly (string Title, string[] Keys)[] StockColumns =
        [("Real, mm", ["thickness"]), ("Limits, mm", ["lower", "upper"]), ("kg/m3", ["density"]), ("Kerf, mm", ["kerf"]), ("Laser", ["laser"]), ("Router", ["router"])];

    private static readonly (string Title, string[] Keys)[] PlasticColumns =
        [
            ("Forms from", ["forming-lower"]), ("usual", ["forming-normal"]), ("up to", ["forming-upper"]), ("Sets at", ["set-temperature"]),
            ("Shrink %", ["shrinkage"]), ("Draft male", ["draft-male"]), ("Draft female", ["draft-female"]), ("Laser", ["laser"]),
        ];

    public static void Print(IAnsiConsole console, Catalog catalog)
    {
        Print(console, "Sheet", catalog.Stock, StockColumns);
        console.WriteLine("Measure your own sheets: the stack is as high as they really are. Kerfs are to start from.");
        Print(console, "Plastic", catalog.Plastic, PlasticColumns);
        console.WriteLine("Temperatures in degrees C. The supplier's data sheet comes first. More of each, such as cautions: buckgen catalog ID");
    }

    private static void Print(IAnsiConsole console, string title, IEnumerable<CatalogEntry> entries, (string Title, string[] Keys)[] columns)
    {
        var sources = new SourceList();
        var table = new Table().Border(TableBorder.Simple).AddColumn(new TableColumn(title).NoWrap());
        foreach (var column in columns) table.AddColumn(new TableColumn(column.Title).RightAligned());
        table.AddColumn("Sources");
        foreach (var entry in entries)
        {
            var shown = columns.Select(c => c.Keys.Select(entry.Find).OfType<CatalogFigure>().ToArray()).ToArray();
            table.AddRow([entry.Id, .. shown.Select(f => Markup.Escape(string.Join('-', f.Select(FigureText.Short)))), sources.Numbers(shown.SelectMany(f => f))]);
        }
        console.Write(table);
        sources.Print(console);
    }
}
