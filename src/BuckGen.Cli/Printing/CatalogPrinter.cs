using BuckGen.Intake.Catalogs;
using BuckGen.Quantities;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the main figures of the catalog, with their sources below.</summary>
internal static class CatalogPrinter
{
    private static readonly (string Title, string[] Keys)[] StockColumns =
        [("Real, mm", ["thickness"]), ("Limits, mm", ["lower", "upper"]), ("kg/m3", ["density"]), ("Kerf, mm", ["kerf"]),
            ("Laser", ["laser"]), ("Router", ["router"])];

    private static readonly (string Title, string[] Keys)[] PlasticColumns =
        [
            ("Forms from", ["forming-lower"]), ("usual", ["forming-normal"]), ("up to", ["forming-upper"]),
            ("Take off", ["set-temperature"]),
            ("Shrink %", ["shrinkage"]), ("Draft male", ["draft-male"]), ("Draft female", ["draft-female"]), ("Laser", ["laser"]),
        ];

    public static void Print(Printer printer, Catalog catalog)
    {
        Print(printer, "Stock", catalog.Stock, StockColumns);
        printer.Line(
            "Measure your own boards: their real thickness decides the height of the stack. The kerfs are starting values.");
        Print(printer, "Plastic", catalog.Plastic, PlasticColumns);
        printer.Line(
            "Temperatures in degrees C. The supplier's data sheet comes first. For details, such as cautions: buckgen "
            + "catalog ID");
        printer.Line();
        foreach (var series in (DrillSeries[])[DrillSeries.Metric, DrillSeries.Number])
            printer.Line($"Drills for vents, {Words.Format(series.Kind)}: {series.Sizes[0].Name} to {series.Sizes[^1].Name}, "
                + $"{series.Sizes.Length} sizes. {series.Source}");
    }

    private static void Print(Printer printer, string title, IEnumerable<CatalogEntry> entries,
        (string Title, string[] Keys)[] columns)
    {
        var sources = new SourceList();
        printer.Table(
            [new(title, OneLine: true), .. columns.Select(c => new Column(c.Title, AlignRight: true)), new("Sources")],
            entries.Select(entry =>
            {
                var shown = columns.Select(c => c.Keys.Select(entry.Find).OfType<CatalogFigure>().ToArray()).ToArray();
                return (string[])[entry.Id, .. shown.Select(f => string.Join('-', f.Select(FigureText.Short))),
                    sources.Numbers(shown.SelectMany(f => f))];
            }));
        sources.Print(printer);
    }
}
