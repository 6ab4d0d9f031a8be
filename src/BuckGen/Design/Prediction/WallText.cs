using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Prediction;

/// <summary>Predicted thicknesses in words.</summary>
internal static class WallText
{
    /// <summary>"0.17 to 0.23 mm"; without a range it says that it is not known.</summary>
    public static string Format(FigureRange? range) => range is { } limits
        ? FormattableString.Invariant($"{limits.Low:0.##} to {limits.High:0.##} mm") : "(range not known)";
}
