namespace BuckGen.Geometry.Offsetting;

/// <summary>A region and what finds its edges and its inside, made once for many questions.</summary>
/// <param name="region">The region.</param>
internal sealed class PreparedRegion(Region region)
{
    /// <summary>The region.</summary>
    public Region Region { get; } = region;

    /// <summary>Its edges.</summary>
    public SegmentIndex Edges { get; } = new(region.Segments);

    /// <summary>Where it is.</summary>
    public RegionInterior Inside { get; } = new(region);
}
