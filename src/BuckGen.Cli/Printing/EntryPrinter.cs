using BuckGen.Catalogs;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>Prints everything known of one sheet or plastic, each figure with its sources.</summary>
internal static class EntryPrinter
{
    public static void Print(IAnsiConsole console, CatalogEntry entry)
    {
        console.WriteLine($"{entry.Id}: {entry.Name}");
        var sources = new SourceList();
        var table = new Table().Border(TableBorder.Simple).AddColumns(new TableColumn("Figure").NoWrap(), new("Value"), new TableColumn("Sources").NoWrap());
        foreach (var figure in entry.Figures)
            table.AddRow(Markup.Escape(figure.Name), Markup.Escape(FigureText.WithUnit(figure)), sources.Numbers([figure]));
        console.Write(table);
        sources.Print(console);
        console.WriteLine("The supplier's data sheet, local rules and licensed practice come first.");
    }
}
