using BuckGen.Geometry;

namespace BuckGen.Output.Reports;

/// <summary>A place in the plan, mm, y up.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Up.</param>
public sealed record PlaceReport(double X, double Y)
{
    internal static PlaceReport Create(Vec2 place) => new(ReportNumber.Round(place.X), ReportNumber.Round(place.Y));
}
