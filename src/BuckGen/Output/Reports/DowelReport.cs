using BuckGen.Design.Bucks;

namespace BuckGen.Output.Reports;

/// <summary>A dowel hole.</summary>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Diameter">Diameter of the hole.</param>
/// <param name="FromLayer">Lowest layer it goes through.</param>
/// <param name="ToLayer">Highest layer it goes through.</param>
public sealed record DowelReport(double X, double Y, double Diameter, int FromLayer, int ToLayer)
{
    internal static DowelReport Create(IGrouping<DowelHole, (DowelHole Hole, int Layer)> hole) => new(
        ReportNumber.Round(hole.Key.Centre.X), ReportNumber.Round(hole.Key.Centre.Y), ReportNumber.Round(hole.Key.Diameter),
        hole.Min(h => h.Layer), hole.Max(h => h.Layer));
}
