using System.Globalization;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the predicted wall of the formed part.</summary>
internal static class FormedPrinter
{
    public static void Print(Printer printer, FormedReport? formed)
    {
        if (formed is not { AtRest: true } f) return;
        printer.Line(f.Thinnest is { } t
            ? Text($"Predicted wall: {f.Mean:0.##} mm on average, thinnest {Range(f)} at {t.X:0.#}, {t.Y:0.#}, ")
                + Text($"{t.Z:0.#} mm up ({f.Detail}, with a ball of {f.CornerBall:0.#} mm)")
            : Text($"Predicted wall: {f.Mean:0.##} mm on average"));
        if (f is { Of1Percent: { } one, Of5Percent: { } five })
            printer.Line(Text($"Thickness that 1 % of the part is below: {Text(one)}; 5 %: {Text(five)}"));
        if (f.GaugeNeeded is { } gauge) printer.Line(Text($"For the minimum wall you want, start with {gauge:0.##} mm"));
    }

    private static string Range(FormedReport formed) => formed.ThinnestRange is { } range
        ? Text(range) : "(only one mesh gave it, so its range is not known)";

    private static string Text(RangeReport range) => Text($"{range.Min:0.##} to {range.Max:0.##} mm");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
