using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Measuring;
using BuckGen.Intake.Outlines;

namespace BuckGen.Output.Reports;

/// <summary>An upright rectangle in a report, mm.</summary>
/// <param name="MinX">Left edge.</param>
/// <param name="MinY">Lower edge.</param>
/// <param name="MaxX">Right edge.</param>
/// <param name="MaxY">Upper edge.</param>
public sealed record BoundsReport(double MinX, double MinY, double MaxX, double MaxY)
{
    internal static BoundsReport Create(Bounds b) =>
        new(ReportNumber.Round(b.MinX), ReportNumber.Round(b.MinY), ReportNumber.Round(b.MaxX), ReportNumber.Round(b.MaxY));
}

/// <summary>What was read from an outline file, in mm and mm².</summary>
/// <param name="Name">File name.</param>
/// <param name="Loops">Closed loops after healing.</param>
/// <param name="Islands">Loops at even nesting depth.</param>
/// <param name="Holes">Loops at odd nesting depth.</param>
/// <param name="Bounds">Bounds; y up.</param>
/// <param name="Area">Area of the islands less their holes, mm².</param>
/// <param name="Perimeter">Length of all loops, mm.</param>
/// <param name="Units">Where the scale came from.</param>
/// <param name="Curves">How drawn curves became lines and arcs.</param>
/// <param name="Measures">Its narrow places, tight radii and sharp corners.</param>
/// <param name="Repairs">What was repaired.</param>
/// <param name="Notes">What was left out or assumed.</param>
public sealed record OutlineReport(
    string Name, int Loops, int Islands, int Holes, BoundsReport Bounds, double Area, double Perimeter, string Units,
    CurvesReport Curves, MeasuresReport Measures, ImmutableArray<RepairReport> Repairs, ImmutableArray<ReadNote> Notes)
{
    /// <summary>Reports an outline.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="cancellation">Stops the measuring.</param>
    public static OutlineReport Create(Outline outline, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var region = outline.Region;
        var measures = OutlineMeasures.Measure(outline, cancellation);
        return new(
            outline.Name, outline.LoopCount, region.Islands.Length, region.HoleCount, BoundsReport.Create(region.Bounds),
            ReportNumber.Round(region.Area), ReportNumber.Round(region.Perimeter), outline.Units,
            CurvesReport.Create(outline.Curves), MeasuresReport.Create(measures),
            [.. outline.Repairs.Select(RepairReport.Create)], [.. outline.Notes, .. measures.Notes]);
    }
}
