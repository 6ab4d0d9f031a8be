using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Venting;

/// <summary>
/// The wood that stands on a layer, with what all the floors between it ask of it: there may be thousands of them.
/// </summary>
/// <param name="wood">The wood.</param>
internal sealed class FloorWalls(Region wood)
{
    private readonly Lazy<SegmentIndex> edges = new(() => new(wood.Segments));
    private readonly Lazy<RegionInterior> interior = new(() => new(wood));

    /// <summary>The wood.</summary>
    public Region Wood => wood;

    /// <summary>Finds its edges near a place.</summary>
    public SegmentIndex Edges => edges.Value;

    /// <summary>Tells where there is wood.</summary>
    public RegionInterior Interior => interior.Value;
}
