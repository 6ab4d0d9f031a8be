using BuckGen.Intake.Catalogs;

namespace BuckGen.Cli.Printing;

/// <summary>Prints everything known of one stock or plastic, each figure with its sources.</summary>
internal static class EntryPrinter
{
    public static void Print(Printer printer, CatalogEntry entry)
    {
        printer.Line($"{entry.Id}: {entry.Name}");
        var sources = new SourceList();
        printer.Table(
            [new("Figure", OneLine: true), new("Value"), new("Sources", OneLine: true)],
            entry.Figures.Select(f => (string[])[f.Name, FigureText.WithUnit(f), sources.Numbers([f])]));
        sources.Print(printer);
        printer.Line("The supplier's data sheet, local rules and licensed practice come first.");
    }
}
