using System.Globalization;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the predicted wall of the formed part.</summary>
internal static class FormedPrinter
{
    public static void Print(Printer printer, FormedReport? formed)
    {
        if (formed is not { AtRest: true } f) return;
        var change = f.Refinement is { } moved
            ? Text($" ({f.Detail}; it moved by {moved * 100:+0;-0;0} % from a coarser net)") : "";
        printer.Line(f.Thinnest is { } t
            ? Text($"Predicted wall: {f.Mean:0.##} mm on average, thinnest {t.Thickness:0.##} mm at {t.X:0.#}, {t.Y:0.#}, ")
                + Text($"{t.Z:0.#} mm up, where a ball of {f.CornerBall:0.#} mm can touch ")
                + Text($"it{change}")
            : Text($"Predicted wall: {f.Mean:0.##} mm on average"));
        if (f.GaugeNeeded is { } gauge) printer.Line(Text($"For the minimum wall you want, start with {gauge:0.##} mm"));
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
