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
                : "")}; {b.OpeningWidth:0.#} x {b.OpeningHeight:0.#} mm free in the frame, ")
                + Fit(b));
        // What does not fit is not drawn.
        if (b.Gap is not null) printer.Line(
            Text($"Drawn {b.ArealDrawRatio:0.##} times by area, {b.LinearDrawRatio:0.##} times across; depth ")
                + Text($"{b.HeightToWidth:0.##} of the narrowest width; {BuckWords.AveragedOver(summary.Buck)} ")
                + Text($"{b.MeanThickness:0.##} mm thick on average"));
        if (b.GaugeForMinWall is { } gauge) printer.Line(Text($"For the mean wall you want, start with {gauge:0.##} mm"));
        foreach (var y in b.Yields)
            printer.Line(Text($"A sheet of {y.Width:0.#} x {y.Height:0.#} mm gives {y.Count}, using {y.Share * 100:0} % of it"));
    }

    private static string Fit(BlankReport b) => b switch
    {
        { Gap: null } => Text($"too small for the buck: {b.Missing:0.#} mm are missing"),
        { BaseGap: null } => Text($"{b.Gap:0.#} mm from buck to frame; ")
            + Text($"all that stands under the sheet is {b.Missing:0.#} mm larger"),
        { BaseGap: { } gap } when gap != b.Gap => Text($"{b.Gap:0.#} mm from buck to frame, {gap:0.#} mm from base to frame"),
        _ => Text($"{b.Gap:0.#} mm from buck to frame"),
    } + (b is { Turned: true, Gap: not null } ? "; turn the buck by 90 degrees" : "");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
