using System.Globalization;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the predicted wall of the formed part.</summary>
internal static class FormedPrinter
{
    public static void Print(Printer printer, FormedReport? formed)
    {
        if (formed is not { AtRest: true } f) return;
        var mean = $"Predicted wall: {RangeReport.Format(f.MeanRange)} on average over the part";
        printer.Line(f.Thinnest is { } t
            ? $"{mean}, thinnest {RangeReport.Format(f.ThinnestRange)} at "
                + Text($"{t.X:0.#}, {t.Y:0.#}, {t.Z:0.#} mm up ({f.Detail}, with a ball of {f.CornerBall:0.#} mm)")
            : mean);
        if (f is { Of1Percent: { } one, Of5Percent: { } five })
            printer.Line(
                $"Thickness that 1 % of the part is below: {RangeReport.Format(one)}; 5 %: {RangeReport.Format(five)}");
        if (f.GaugeNeeded is { } gauge)
            printer.Line($"For the minimum wall you want, start with {RangeReport.Format(gauge)}");
        if (!f.Inputs.IsEmpty) printer.Line("What changes the thinnest wall, each input alone:");
        foreach (var input in f.Inputs)
            printer.Line($"  {input.Input}, {input.From} to {input.To}: {input.Effect}");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
