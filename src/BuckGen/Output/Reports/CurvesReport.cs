using BuckGen.Intake.Outlines;

namespace BuckGen.Output.Reports;

/// <summary>How drawn curves became lines and arcs.</summary>
/// <param name="Count">Splines, Béziers and ellipses in the drawing.</param>
/// <param name="Pieces">Lines and arcs that replace them.</param>
/// <param name="MaxError">The maximum distance between a curve and its replacement, mm.</param>
public sealed record CurvesReport(int Count, int Pieces, double MaxError)
{
    internal static CurvesReport Create(FittedCurves curves) =>
        new(curves.Count, curves.Pieces, ReportNumber.Round(curves.MaxError));
}
