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
        var made = new SegmentIndex(offsetter.Offset(new([cut]), -compensation, CornerJoin.Round, cancellation).Segments);
        var reach = 4 * compensation + Beyond;
        foreach (var segment in nominal.Loops.SelectMany(l => l.Segments))
            if (made.DistanceWithin(segment.PointAt(0.5), reach) > reach) return segment.PointAt(0.5);
        return null;
    }
}
