using BuckGen.Intake.Catalogs;

namespace BuckGen.Cli.Printing;

/// <summary>Sources numbered in the order in which tables name them, to be listed below.</summary>
internal sealed class SourceList
{
    private readonly List<string> sources = [];

    /// <summary>The numbers of the sources of some figures: "1 3".</summary>
    public string Numbers(IEnumerable<CatalogFigure> figures) =>
        string.Join(' ', figures.SelectMany(f => f.Sources).Select(Number).Distinct().Order());

    public void Print(Printer printer)
    {
        printer.Line("Sources");
        printer.List(sources.Select(s => ($"{Number(s)}", s)));
    }

    private int Number(string source)
    {
        if (!sources.Contains(source)) sources.Add(source);
        return sources.IndexOf(source) + 1;
    }
}
