using BuckGen.Design.Forming;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Venting;

/// <summary>How wide a vent may be: no wider than the sheet is thick where it lands, so that it leaves no pimple.</summary>
/// <param name="ArealRatio">Area of the formed sheet over area of the flat sheet that becomes it.</param>
/// <param name="FormedThickness">Mean thickness of the formed sheet, mm.</param>
/// <param name="MaxDiameter">Maximum diameter of a hole, mm.</param>
public sealed record VentSizing(double ArealRatio, double FormedThickness, double MaxDiameter)
{
    /// <summary>
    /// Maximum diameter of a hole for any sheet, mm: heavy rigid sheet (SPI Plastics Engineering Handbook, from memory).
    /// </summary>
    public const double UpperLimit = 1.5;

    /// <summary>
    /// Minimum diameter of a hole that is worth drilling, mm: a common small drill (common practice, no source).
    /// </summary>
    public const double LowerLimit = 0.4;

    /// <summary>The widest drill that leaves no mark, of those worth drilling with.</summary>
    internal Drill Drill(DrillSeries drills) => drills.WidestWithin(MaxDiameter, LowerLimit);

    /// <summary>
    /// Sizes the vents of a buck by the mean thickness of the formed sheet, and by what the plastic takes without a mark.
    /// </summary>
    internal static VentSizing FromBlank(Blank blank, CatalogPlastic? plastic) =>
        new(blank.Ratios.Areal, blank.MeanThickness,
            Math.Min(plastic?.MaxVentDiameter(blank.Gauge) ?? UpperLimit, blank.MeanThickness));
}
