using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Prediction;

/// <summary>Between which limits a predicted figure lies, as far as the stiffness of the hot sheet decides it.</summary>
internal static class MaterialError
{
    /// <summary>
    /// Modulus of an unnamed plastic, MPa: the softest and the stiffest of the catalog (common practice, no source).
    /// </summary>
    public static FigureRange UnknownModulus { get; } = new(0.05, 1.5);

    /// <summary>The modulus between two, in the middle of their ratio, MPa: forming depends on pressure over modulus.</summary>
    public static double Middle(FigureRange modulus) => Math.Sqrt(modulus.Low * modulus.High);

    /// <summary>Ratios of a figure at both ends to that in the middle; the middle itself counts with 1.</summary>
    /// <param name="soft">At the softest, above 0.</param>
    /// <param name="middle">Between, above 0.</param>
    /// <param name="stiff">At the stiffest, above 0.</param>
    public static FigureRange Ratios(double soft, double middle, double stiff) =>
        new(Math.Min(1, Math.Min(soft, stiff) / middle), Math.Max(1, Math.Max(soft, stiff) / middle));

    /// <summary>A range, made wider by the ratios of another cause.</summary>
    public static FigureRange Widen(FigureRange range, FigureRange ratios) =>
        new(range.Low * ratios.Low, range.High * ratios.High);
}
