using System.Globalization;
using BuckGen.Reports;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>Prints what was made: layers, real depth, footprint, sheets, findings, cautions.</summary>
internal static class PlanPrinter
{
    public static void Print(IAnsiConsole console, Summary summary, string folder)
    {
        var buck = summary.Buck;
        console.WriteLine(Text($"{summary.Title}: {buck.Kind} buck, {buck.Draft:0.##} degrees of draft, to size at the {buck.OutlineAt}"));
        console.WriteLine(Text($"Depth {buck.Depth:0.##} mm (wanted {buck.DepthWanted:0.##}, off by {buck.DepthMiss:+0.##;-0.##;0}); stack {buck.Height:0.##} mm high"));
        console.WriteLine(Text($"Footprint {summary.Footprint.Width:0.0} x {summary.Footprint.Height:0.0} mm; {summary.CutLength / 1000:0.00} m to cut"));
        if (summary.Air is { } air)
            console.WriteLine(Text($"{air.VentsPlaced} vents of {summary.Vents.FirstOrDefault()?.Diameter ?? 0:0.##} mm, ruled by the {air.RuledBy}; {air.Volume:0.##} L of air leave in {(air.Seconds is { } s ? Text($"{s:0.##} s") : "more than a minute")}"));
        BlankPrinter.Print(console, summary);
        FormedPrinter.Print(console, summary.Formed);
        if (summary.Jig is { } jig) console.WriteLine(Text($"Trim jig: a ring of {jig.RingLayers} layers, {jig.Height:0.##} mm high (wanted {jig.TrimHeight:0.##}){(jig.CoreLayers > 0 ? Text($", a core of {jig.CoreLayers}") : "")}"));
        if (summary.Flange is { } flange) console.WriteLine(Text($"Flange template {flange.Offset:0.##} mm inside the trim line, with its nest"));
        if (summary.Panel is { } panel) console.WriteLine(Text($"Face panel {panel.Width:0.#} x {panel.Height:0.#} mm, {panel.Fit:0.##} mm of room round the part{(panel.Inlays > 0 ? Text($", {panel.Inlays} loose pieces") : "")}"));
        OutlinePrinter.PrintRemarks(console, summary.Outline);
        console.WriteLine();
        console.Write(Layers(summary));
        if (summary.Sheets.Length > 0) console.Write(Sheets(summary));
        CostPrinter.Print(console, summary.Cost);
        console.WriteLine();
        FindingsPrinter.Print(console, summary.Findings);
        console.WriteLine();
        if (summary.Cutting.Machine == "router") console.WriteLine("For a router: the paths are the nominal outlines; set the cutter's side and diameter there.");
        Cautions.Print(console);
        console.WriteLine(Text($"Wrote {summary.Files.Length} files to {folder}"));
    }

    private static Table Layers(Summary summary)
    {
        var table = new Table().Border(TableBorder.Simple)
            .AddColumns(new("Layer"), new("Stock"), new TableColumn("Heights, mm").RightAligned(), new TableColumn("Size, mm").RightAligned(),
                new TableColumn("Pieces").RightAligned(), new TableColumn("Holes").RightAligned());
        foreach (var layer in summary.Layers.Reverse())
            table.AddRow(
                Text($"{layer.Number}{(layer.Role == "base" ? " (base)" : "")}"), Markup.Escape(layer.Stock),
                Text($"{layer.Bottom:0.##} to {layer.Top:0.##}"),
                Text($"{layer.Bounds.MaxX - layer.Bounds.MinX:0.0} x {layer.Bounds.MaxY - layer.Bounds.MinY:0.0}"),
                Text($"{layer.Islands}"), Text($"{layer.Holes}"));
        return table;
    }

    private static Table Sheets(Summary summary)
    {
        var table = new Table().Border(TableBorder.Simple)
            .AddColumns(new("Sheets"), new("Size, mm"), new TableColumn("Used").RightAligned(), new("Parts"));
        foreach (var (sheet, number) in summary.Sheets.Select((s, i) => (s, i + 1)))
            table.AddRow(
                Markup.Escape(Text($"{number}  {sheet.Stock}")), Text($"{sheet.Width:0.#} x {sheet.Height:0.#}"),
                Text($"{sheet.Utilisation * 100:0} %"), Markup.Escape(string.Join(' ', sheet.Parts)));
        return table;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
