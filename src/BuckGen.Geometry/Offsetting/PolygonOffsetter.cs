using BuckGen.Geometry.Polygonal;
using NetTopologySuite.Operation.Buffer;

namespace BuckGen.Geometry.Offsetting;

/// <summary>The safe offset: arcs become short lines, a general polygon library does the work, arcs are found again.</summary>
/// <param name="chord">Maximum distance, mm, between an arc and the lines that replace it.</param>
internal sealed class PolygonOffsetter(double chord) : IOffsetter
{
    /// <inheritdoc/>
    public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(region);
        ArgumentNullException.ThrowIfNull(join);
        cancellation.ThrowIfCancellationRequested();
        if (distance == 0 || region.IsEmpty) return region;
        // The errors of cutting arcs, rounding corners and finding arcs again add up; each gets a share of the whole.
        var share = chord / 8;
        // The error of a chord is r(1 - cos(a/2)).
        var angle = 2 * Math.Acos(1 - Math.Min(1, share / Math.Abs(distance)));
        var parameters = new BufferParameters
        {
            JoinStyle = join.Corners == Corners.Round ? JoinStyle.Round : JoinStyle.Mitre,
            MitreLimit = join.MitreLimit,
            QuadrantSegments = Math.Clamp((int)Math.Ceiling(Math.PI / 2 / angle), 8, 1000),
            SimplifyFactor = 1e-4,
        };
        var polygons = PolygonConversion.ToGeometry(region, share).Buffer(distance, parameters);
        cancellation.ThrowIfCancellationRequested();
        return PolygonConversion.FromGeometry(polygons, share);
    }
}
