using System.Globalization;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the sheet that a part takes.</summary>
internal static class BlankPrinter
{
    public static void Print(Printer printer, Summary summary)
    {
        if (summary.Sizing.Drawn != "buck" || summary.Sizing.Shrinkage > 0)
            printer.Line(
                Text($"The drawing shows the ")
                    + Text($"{(summary.Sizing.Drawn == "buck" ? "buck" : Text($"{summary.Sizing.Drawn} of the part"))}: ")
                    + Text($"enlarged for {summary.Sizing.Shrinkage:0.##} % of shrinkage, moved ")
                    + Text($"{summary.Sizing.WallAllowance:+0.##;-0.##;0} mm for the wall"));
        if (summary.Blank is not { } b) return;
        printer.Line(
            Text($"Blank {b.Width:0.#} x {b.Height:0.#} mm of {b.Gauge:0.##} mm{(b.Plastic.Length > 0 ? $" {b.Plastic}"
                : "")}; {b.OpeningWidth:0.#} x {b.OpeningHeight:0.#} mm free in the frame, {b.Gap:0.#} mm from buck to frame"));
        printer.Line(
            Text($"Drawn {b.ArealDrawRatio:0.##} times by area, {b.LinearDrawRatio:0.##} times across; depth ")
                + Text($"{b.HeightToWidth:0.##} of the narrowest width; {b.MeanThickness:0.##} mm thick on average, ")
                + "thinner in corners");
        if (b.GaugeForMinWall is { } gauge) printer.Line(Text($"For the mean wall you want, start with {gauge:0.##} mm"));
        foreach (var y in b.Yields)
            printer.Line(Text($"A sheet of {y.Width:0.#} x {y.Height:0.#} mm gives {y.Count}, using {y.Share * 100:0} % of it"));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
