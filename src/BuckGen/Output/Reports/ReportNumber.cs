namespace BuckGen.Output.Reports;

/// <summary>Numbers as they stand in reports: four decimals, so that they read the same on every machine.</summary>
internal static class ReportNumber
{
    public static double Round(double value) => Math.Round(value, 4) + 0.0;

    public static double? Round(double? value) => value is { } v ? Round(v) : null;
}
