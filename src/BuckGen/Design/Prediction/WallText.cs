using System.Globalization;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Prediction;

/// <summary>Predicted thicknesses in words.</summary>
internal static class WallText
{
    /// <summary>
    /// "0.17 to 0.23 mm", or "0.2 mm" where both ends are written alike; without a range it says that it is not known.
    /// </summary>
    /// <param name="range">The range, mm.</param>
    /// <param name="format">How its numbers are written.</param>
    public static string Format(FigureRange? range, string format = "0.##")
    {
        if (range is not { } limits) return "(range not known)";
        var (low, high) = (limits.Low.ToString(format, CultureInfo.InvariantCulture),
            limits.High.ToString(format, CultureInfo.InvariantCulture));
        return low == high ? $"{low} mm" : $"{low} to {high} mm";
    }
}
