using BuckGen.Design.Parts;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>How the buck was sized from the part.</summary>
/// <param name="Drawn">"buck", "inside" or "outside": what the drawing shows.</param>
/// <param name="Shrinkage">Shrinkage allowed for, per cent.</param>
/// <param name="WallAllowance">How far the outline was moved for the wall; negative inward.</param>
/// <param name="FormedTolerance">How far the largest dimension may be off as formed, either way.</param>
/// <param name="TrimmedTolerance">How far it may be off when trimmed by hand, either way.</param>
public sealed record SizingReport(string Drawn, double Shrinkage, double WallAllowance, double FormedTolerance,
    double TrimmedTolerance)
{
    internal static SizingReport Create(PartSizing s) =>
        new(s.Side is { } side ? Words.Format(side) : "buck",
        ReportNumber.Round(s.Shrinkage), ReportNumber.Round(s.WallAllowance),
        ReportNumber.Round(s.FormedTolerance), ReportNumber.Round(s.TrimmedTolerance));
}
