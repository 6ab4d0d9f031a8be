using BuckGen.Design.Venting;
using BuckGen.Intake.Catalogs;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>A vent.</summary>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Diameter">Diameter of the hole at the surface.</param>
/// <param name="Drill">The drill for it: "0.65 mm" or "#72".</param>
/// <param name="Layer">Layer on whose top face it opens.</param>
/// <param name="Reason">"given", "gap", "counter", "corner", "wall" or "pattern".</param>
public sealed record VentReport(double X, double Y, double Diameter, string Drill, int Layer, string Reason)
{
    internal static VentReport Create(Vent v, DrillSeries drills) =>
        new(ReportNumber.Round(v.Centre.X), ReportNumber.Round(v.Centre.Y), ReportNumber.Round(v.Diameter),
            drills.NameOf(v.Diameter), v.Layer,
            Words.Format(v.Reason));
}
