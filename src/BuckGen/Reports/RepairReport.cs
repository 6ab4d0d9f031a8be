using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Outlines;

namespace BuckGen.Reports;

/// <summary>A place in the plan, mm, y up.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Up.</param>
public sealed record PlaceReport(double X, double Y)
{
    internal static PlaceReport Of(Vec2 place) => new(Rounded.Of(place.X), Rounded.Of(place.Y));
}

/// <summary>What was mended in a drawing.</summary>
/// <param name="Kind">A short stable word.</param>
/// <param name="Count">How many places were mended.</param>
/// <param name="Largest">The largest distance by which anything was moved or left out, mm; 0 when nothing moved.</param>
/// <param name="Message">The whole story in plain words.</param>
/// <param name="Places">Where.</param>
public sealed record RepairReport(string Kind, int Count, double Largest, string Message, ImmutableArray<PlaceReport> Places)
{
    internal static RepairReport Of(Repair repair) => new(
        repair.Kind, repair.Count, Rounded.Of(repair.Largest), repair.Message, [.. repair.Places.Select(PlaceReport.Of)]);
}

/// <summary>How drawn curves became lines and arcs.</summary>
/// <param name="Count">Splines, Béziers and ellipses in the drawing.</param>
/// <param name="Pieces">Lines and arcs that stand for them.</param>
/// <param name="LargestError">The largest distance between a curve and what stands for it, mm.</param>
public sealed record CurvesReport(int Count, int Pieces, double LargestError)
{
    internal static CurvesReport Of(FittedCurves curves) => new(curves.Count, curves.Pieces, Rounded.Of(curves.LargestError));
}
