using BuckGen.Design.Trimming;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Reports;
using System.Collections.Immutable;
using System.Globalization;

namespace BuckGen.Cli.Printing;

/// <summary>Prints what was made: layers, real depth, footprint, boards, findings, cautions.</summary>
internal static class PlanPrinter
{
    public static void Print(Printer printer, Summary summary, string folder)
    {
        var buck = summary.Buck;
        printer.Line(
            $"{summary.Title}: {buck.Kind} buck, {BuckWords.Draft(buck)} of draft, to size at the {buck.OutlineAt}");
        if (buck.EdgeRadius is { } edge)
            printer.Line(Text($"Round its upper edge to {edge:0.##} mm when it is glued"));
        printer.Line(
            Text($"Buck {buck.Depth:0.##} mm deep (off by {buck.DepthMiss:+0.##;-0.##;0}); ")
                + (summary.Groups is { } bucks ? $"made in {CountText.Format(bucks.Length, "buck")}, with a register board"
                    : Text($"stack {buck.Height:0.##} mm high")));
        printer.Line(
            Text($"Footprint {summary.Footprint.Width:0.0} x {summary.Footprint.Height:0.0} mm; ")
                + Text($"{summary.CutLength / 1000:0.00} m to cut"));
        if (summary.Air is { } air)
            printer.Line(
                Text($"{air.VentsPlaced} vents, drill {summary.Vents.FirstOrDefault()?.Drill ?? "none"}, ruled by the ")
                    + Text($"{air.RuledBy}; {air.Volume:0.##} L of air leave in ")
                    + Text($"{(air.Seconds is { } s ? Text($"{s:0.##} s") : "more than a minute")}"));
        PartPrinter.Print(printer, summary.Part);
        BlankPrinter.Print(printer, summary);
        FormedPrinter.Print(printer, summary.Formed);
        if (summary.Jig is { } jig)
            printer.Line(
                Text($"Trim jig: a ring of {CountText.Format(jig.RingLayers, "layer")}, {jig.Height:0.##} mm high from the ")
                    + Text($"{FlangeFaceText.FormatWord(jig.HeightFrom)} (wanted {jig.TrimHeight:0.##})")
                    + (jig.CoreLayers > 0 ? Text($", a core of {jig.CoreLayers}") : ""));
        if (summary.Flange is { } flange)
            printer.Line(Text($"Flange template {flange.Offset:0.##} mm inside the trim line, with its nest; ")
                + Text($"the flange is {flange.Narrowest:0.##} mm wide where it is narrowest"));
        if (summary.Panel is { } panel)
            printer.Line(
                Text($"Face panel {panel.Width:0.#} x {panel.Height:0.#} mm, {panel.Fit:0.##} mm of room round the ")
                    + Text($"part{(panel.Inlays > 0 ? Text($", {panel.Inlays} loose pieces") : "")}; cut it with its face down"));
        OutlinePrinter.PrintRemarks(printer, summary.Outline);
        printer.Line();
        if (summary.Groups is { } groups) PrintGroups(printer, groups);
        else PrintLayers(printer, summary);
        if (summary.Boards.Length > 0) PrintBoards(printer, summary);
        CostPrinter.Print(printer, summary.Cost);
        printer.Line();
        FindingsPrinter.Print(printer, summary.Findings);
        printer.Line();
        if (summary.Cutting.Machine == "router")
            printer.Line("For a router: the paths are the nominal outlines; set the cutter's side and diameter there.");
        Cautions.Print(printer);
        printer.Line(Text($"Wrote {summary.Files.Length} files to {folder}")
            + (summary.Groups is null ? "" : ", and those of every buck to its own folder in it"));
    }

    private static void PrintGroups(Printer printer, ImmutableArray<GroupReport> groups) => printer.Table(
        [new("Buck", AlignRight: true), new("Folder"), new("Islands", AlignRight: true), new("Along x, mm", AlignRight: true),
            new("Blank, mm", AlignRight: true), new("Boards", AlignRight: true), new("Errors", AlignRight: true)],
        groups.Select(g => (string[])
        [
            Text($"{g.Number}"), g.Folder, Text($"{g.Islands.Length}"), Text($"{g.Bounds.MinX:0.#} to {g.Bounds.MaxX:0.#}"),
            g.BlankWidth is null ? "none" : Text($"{g.BlankWidth:0} x {g.BlankHeight:0}"), Text($"{g.Boards}"),
            Text($"{g.Errors}"),
        ]));

    private static void PrintLayers(Printer printer, Summary summary) => printer.Table(
        [new("Layer"), new("Stock"), new("Heights, mm", AlignRight: true), new("Size, mm", AlignRight: true),
            new("Pieces", AlignRight: true), new("Holes", AlignRight: true)],
        summary.Layers.Reverse().Select(layer => (string[])
        [
            Text($"{layer.Number}{(layer.Role == "base" ? " (base)" : "")}"), layer.Stock,
            Text($"{layer.Bottom:0.##} to {layer.Top:0.##}"),
            Text($"{layer.Bounds.MaxX - layer.Bounds.MinX:0.0} x {layer.Bounds.MaxY - layer.Bounds.MinY:0.0}"),
            Text($"{layer.Islands}"), Text($"{layer.Holes}"),
        ]));

    private static void PrintBoards(Printer printer, Summary summary) => printer.Table(
        [new("Boards"), new("Size, mm"), new("Used", AlignRight: true), new("Parts")],
        summary.Boards.Select((board, i) => (string[])
        [
            Text($"{i + 1}  {board.Stock}"), Text($"{board.Width:0.#} x {board.Height:0.#}"),
            Text($"{board.Utilisation * 100:0} %"), string.Join(' ', board.Parts),
        ]));

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
