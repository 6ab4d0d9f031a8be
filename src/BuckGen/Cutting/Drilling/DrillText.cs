using System.Globalization;

namespace BuckGen.Cutting.Drilling;

/// <summary>Numbers as drill files write them: fixed notation, the same in every culture.</summary>
internal static class DrillText
{
    /// <summary>The smallest step that is written, mm.</summary>
    public const double Step = 0.001;

    /// <summary>A length with three decimals, never "-0.000".</summary>
    public static string Length(double millimetres) => Rounded(millimetres).ToString("F3", CultureInfo.InvariantCulture);

    /// <summary>A speed with as many decimals as it needs, up to three.</summary>
    public static string Speed(double value) => Rounded(value).ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>The number as it will be written, with any minus taken off zero.</summary>
    public static double Rounded(double value) => Math.Round(value, 3) + 0.0;
}
