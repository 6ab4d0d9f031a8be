using System.Globalization;
using BuckGen.Reports;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>Prints what was read from a drawing.</summary>
internal static class OutlinePrinter
{
    private const double Inch = 25.4;

    public static void Print(IAnsiConsole console, OutlineReport report)
    {
        var (width, height) = (report.Bounds.MaxX - report.Bounds.MinX, report.Bounds.MaxY - report.Bounds.MinY);
        console.WriteLine(Text($"{report.Name}"));
        console.WriteLine(Text($"Size {width:0.###} x {height:0.###} mm ({width / Inch:0.###} x {height / Inch:0.###} in); unit: {report.Units}"));
        console.WriteLine(Text($"{Count(report.Loops, "closed loop")}: {Count(report.Islands, "island")}, {Count(report.Holes, "hole")}"));
        console.WriteLine(Text($"Area {report.Area / 100:0.##} cm2, edges {report.Perimeter:0.#} mm long"));
        if (report.Curves.Count > 0)
            console.WriteLine(Text($"Curves: {report.Curves.Count}, followed by {report.Curves.Pieces} lines and arcs to {report.Curves.LargestError:0.####} mm"));
        PrintRemarks(console, report);
    }

    /// <summary>What was mended, left out or taken on trust.</summary>
    public static void PrintRemarks(IAnsiConsole console, OutlineReport report)
    {
        foreach (var repair in report.Repairs) console.WriteLine($"Repaired: {repair.Message}");
        foreach (var note in report.Notes) console.WriteLine($"Note: {note.Message}");
    }

    private static string Count(int count, string one) => Text($"{count} {one}{(count == 1 ? "" : "s")}");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
