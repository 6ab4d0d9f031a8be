using System.Globalization;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Printing;

/// <summary>Prints what was read from a drawing.</summary>
internal static class OutlinePrinter
{
    private const double Inch = 25.4;

    public static void Print(Printer printer, OutlineReport report)
    {
        var (width, height) = (report.Bounds.MaxX - report.Bounds.MinX, report.Bounds.MaxY - report.Bounds.MinY);
        printer.Line(Text($"{report.Name}"));
        printer.Line(
            Text($"Size {width:0.###} x {height:0.###} mm ({width / Inch:0.###} x {height / Inch:0.###} in); unit: ")
                + Text($"{report.Units}"));
        printer.Line(
            Text($"{Count(report.Loops, "closed loop")}: {Count(report.Islands, "island")}, {Count(report.Holes, "hole")}"));
        printer.Line(Text($"Area {report.Area / 100:0.##} cm2, edges {report.Perimeter:0.#} mm long"));
        if (report.Curves.Count > 0)
            printer.Line(
                Text($"Curves: {report.Curves.Count}, followed by {report.Curves.Pieces} lines and arcs to ")
                    + Text($"{report.Curves.MaxError:0.####} mm"));
        PrintMeasures(printer, report.Measures);
        PrintRemarks(printer, report);
    }

    /// <summary>Narrow places, tight radii and sharp corners; one line for each that there is.</summary>
    private static void PrintMeasures(Printer printer, MeasuresReport measures)
    {
        if (measures.NarrowestNeck is { } neck) printer.Line($"Narrowest neck {Length(neck.Width)} at {At(neck.Place)}");
        if (measures.NarrowestGap is { } gap)
            printer.Line($"Narrowest gap {Length(gap.Width)}, {Where(gap.Kind)}, at {At(gap.Place)}");
        if (measures.MinInsideRadius is { } inside)
            printer.Line($"Minimum inside radius {Length(inside.Radius)} at {At(inside.Place)}");
        if (measures.MinOutsideRadius is { } outside)
            printer.Line($"Minimum outside radius {Length(outside.Radius)} at {At(outside.Place)}");
        if (measures.SharpestCorner is { } corner)
            printer.Line(Text($"Sharpest corner {corner.Angle:0.##} degrees, an {corner.Side} corner, at {At(corner.Place)}"));
        if (measures.Error > 0)
            printer.Line(
                Text($"Widths are right to {2 * measures.Error:0.####} mm; radii are those of the arcs that follow the curves"));
    }

    private static string Length(double mm) => Text($"{mm:0.###} mm ({mm / Inch:0.###} in)");

    private static string At(PlaceReport place) => Text($"{place.X:0.###}, {place.Y:0.###}");

    private static string Where(string kind) => kind switch
    {
        "between-parts" => "between parts",
        "across-slot" => "across a slot",
        _ => "inside a hole",
    };

    /// <summary>What was repaired, left out or assumed.</summary>
    public static void PrintRemarks(Printer printer, OutlineReport report)
    {
        foreach (var repair in report.Repairs) printer.Line($"Repaired: {repair.Message}");
        foreach (var note in report.Notes) printer.Line($"Note: {note.Message}");
    }

    private static string Count(int count, string one) => Text($"{count} {one}{(count == 1 ? "" : "s")}");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
