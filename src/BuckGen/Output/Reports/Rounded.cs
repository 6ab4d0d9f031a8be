namespace BuckGen.Output.Reports;

/// <summary>Numbers as they stand in reports: four decimals, so that they read the same on every machine.</summary>
internal static class Rounded
{
    public static double Of(double value) => Math.Round(value, 4) + 0.0;

    public static double? Of(double? value) => value is { } v ? Of(v) : null;
}
