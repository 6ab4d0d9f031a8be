using BuckGen.Geometry;

namespace BuckGen.Output.Reports;

/// <summary>A place in the plan, mm, y up.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Up.</param>
public sealed record PlaceReport(double X, double Y)
{
    internal static PlaceReport Of(Vec2 place) => new(Rounded.Of(place.X), Rounded.Of(place.Y));
}
