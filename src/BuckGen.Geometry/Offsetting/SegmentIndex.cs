using NetTopologySuite.Geometries;
using NetTopologySuite.Index.HPRtree;

namespace BuckGen.Geometry.Offsetting;

/// <summary>Finds the pieces of an outline near a place.</summary>
internal sealed class SegmentIndex
{
    /// <summary>First radius of the search for the nearest piece, mm; it doubles until a piece is found.</summary>
    private const double FirstReach = 1;

    private readonly Segment[] segments;
    private readonly HPRtree<int> tree = new();

    public SegmentIndex(IEnumerable<Segment> segments)
    {
        this.segments = [.. segments];
        for (var i = 0; i < this.segments.Length; i++) tree.Insert(ToEnvelope(this.segments[i].Bounds), i);
        tree.Build();
    }

    /// <summary>The distance to the nearest piece, mm; infinite when none lies within the reach.</summary>
    public double DistanceWithin(Vec2 p, double reach)
    {
        var nearest = double.PositiveInfinity;
        foreach (var i in tree.Query(ToEnvelope(Bounds.FromCorners(p, p).Grown(reach))))
            nearest = Math.Min(nearest, segments[i].DistanceTo(p));
        return nearest <= reach ? nearest : double.PositiveInfinity;
    }

    /// <summary>The distance to the nearest piece, mm; infinite when there is no piece.</summary>
    public double Distance(Vec2 p)
    {
        if (segments.Length == 0) return double.PositiveInfinity;
        for (var reach = FirstReach; ; reach *= 2)
            if (DistanceWithin(p, reach) is var distance && !double.IsInfinity(distance)) return distance;
    }

    /// <summary>The numbers of the pieces whose bounds meet a rectangle.</summary>
    public IEnumerable<int> IndicesIntersecting(Bounds bounds) => tree.Query(ToEnvelope(bounds));

    /// <summary>The pieces whose bounds meet a rectangle.</summary>
    public IEnumerable<Segment> Intersecting(Bounds bounds) => tree.Query(ToEnvelope(bounds)).Select(i => segments[i]);

    internal static Envelope ToEnvelope(Bounds b) => new(b.MinX, b.MaxX, b.MinY, b.MaxY);
}
