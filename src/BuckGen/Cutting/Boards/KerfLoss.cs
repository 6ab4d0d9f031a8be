using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Cutting.Boards;

/// <summary>Finds where allowing for the kerf fills a slot or a hole that is narrower than the cut.</summary>
internal static class KerfLoss
{
    /// <summary>An inside corner is rounded by the cut; what is off by more than this beyond it, mm, is a loss.</summary>
    private const double Beyond = 0.2;

    /// <summary>A place of the nominal edge that the cut does not make; null when it makes them all.</summary>
    /// <param name="nominal">The piece to size.</param>
    /// <param name="cut">The path of the machine's middle.</param>
    /// <param name="compensation">Half the kerf, mm.</param>
    /// <param name="offsetter">Makes the offset.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static Vec2? Find(Island nominal, Island cut, double compensation, IOffsetter offsetter,
        CancellationToken cancellation)
    {
        if (compensation == 0) return null;
        var reach = 4 * compensation + Beyond;
        // From every point of its path the cut reaches an edge half a kerf away; so a path this near leaves nothing out.
        if (Missed(nominal, new([cut]), reach - compensation) is null) return null;
        return Missed(nominal, offsetter.Offset(new([cut]), -compensation, CornerJoin.Round, cancellation), reach);
    }

    /// <summary>The first place of the nominal edge from which no edge of a region lies within reach.</summary>
    private static Vec2? Missed(Island nominal, Region region, double reach)
    {
        var edges = new SegmentIndex(region.Segments);
        foreach (var segment in nominal.Loops.SelectMany(l => l.Segments))
            if (edges.DistanceWithin(segment.PointAt(0.5), reach) > reach) return segment.PointAt(0.5);
        return null;
    }
}
