using BuckGen.Geometry;

namespace BuckGen.Output.Reports;

/// <summary>Size of a region.</summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Area">Area.</param>
public sealed record FootprintReport(double Width, double Height, double Area)
{
    internal static FootprintReport Create(Region region) => region.IsEmpty
        ? new(0, 0, 0)
        : new(ReportNumber.Round(region.Bounds.Width), ReportNumber.Round(region.Bounds.Height), ReportNumber.Round(region.Area));
}
