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
            ? Text($"Predicted wall: {Range(f.MeanRange)} on average over the part, thinnest {Range(f.ThinnestRange)} at ")
                + Text($"{t.X:0.#}, {t.Y:0.#}, {t.Z:0.#} mm up ({f.Detail}, with a ball of {f.CornerBall:0.#} mm)")
            : Text($"Predicted wall: {Range(f.MeanRange)} on average over the part"));
        if (f is { Of1Percent: { } one, Of5Percent: { } five })
            printer.Line(Text($"Thickness that 1 % of the part is below: {Text(one)}; 5 %: {Text(five)}"));
        if (f.GaugeNeeded is { } gauge) printer.Line(Text($"For the minimum wall you want, start with {Text(gauge)}"));
    }

    private static string Range(RangeReport? range) => range is null ? "(range not known)" : Text(range);

    private static string Text(RangeReport range) => Text($"{range.Min:0.##} to {range.Max:0.##} mm");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
