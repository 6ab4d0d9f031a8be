using BuckGen.Geometry;

namespace BuckGen.Output.Reports;

/// <summary>Size of a region.</summary>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
/// <param name="Area">Area.</param>
public sealed record FootprintReport(double Width, double Height, double Area)
{
    internal static FootprintReport Of(Region region) => region.IsEmpty
        ? new(0, 0, 0)
        : new(Rounded.Of(region.Bounds.Width), Rounded.Of(region.Bounds.Height), Rounded.Of(region.Area));
}
