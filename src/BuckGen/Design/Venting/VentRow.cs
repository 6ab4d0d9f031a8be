using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Venting;

/// <summary>A closed line at one distance from the walls, on which vents stand in a row.</summary>
internal sealed class VentRow
{
    /// <summary>A turn of the line sharper than this, radians, is a corner; air gathers there.</summary>
    private const double CornerTurn = 30 * Math.PI / 180;

    private readonly LoopMeasure line;
    private readonly double apart;
    private readonly Vec2 middle;

    /// <param name="line">The line; the air lies to its left.</param>
    /// <param name="apart">Minimum distance of two vents, mm.</param>
    /// <param name="middle">The middle of the whole outline.</param>
    public VentRow(Loop line, double apart, Vec2 middle)
    {
        // Where an arc was begun to be drawn must not look like two flatter arcs.
        this.line = new(Loop.FromSegments(SegmentMerging.Merge([.. line.Segments])));
        (this.apart, this.middle) = (apart, middle);
    }

    /// <summary>Corners first, then evenly between them, nowhere farther apart than the spacing.</summary>
    public IEnumerable<VentCandidate> Candidates(double spacing)
    {
        var corners = Corners(spacing).Order().ToList();
        foreach (var (along, turn) in corners) yield return new(line.PointAt(along), VentReason.Corner, line.PointAt,
            along, turn);
        var starts = corners.Select(c => c.Along).ToList();
        if (starts.Count == 0) starts.Add(RowStart.Find(line, middle));
        for (var c = 0; c < starts.Count; c++)
        {
            var end = c + 1 < starts.Count ? starts[c + 1] : starts[0] + line.Loop.Length;
            var count = (int)Math.Ceiling((end - starts[c]) / spacing - 1e-9);
            for (var k = corners.Count == 0 ? 0 : 1; k < count; k++)
            {
                var along = starts[c] + (end - starts[c]) * k / count;
                yield return new(line.PointAt(along), VentReason.Wall, line.PointAt, along);
            }
        }
    }

    /// <summary>
    /// The inside corners; of those too near to each other for a vent each, the sharpest, then the one farthest out.
    /// </summary>
    private List<(double Along, double Turn)> Corners(double spacing)
    {
        var kept = new List<(double Along, double Turn)>();
        var places = new PlaceGrid(apart);
        foreach (var corner in Turns(spacing).OrderByDescending(c => Math.Round(c.Turn, 3))
                     .ThenByDescending(c => Math.Round(line.PointAt(c.Along).DistanceTo(middle), 2))
                     .ThenBy(c => RowStart.Direction(line.PointAt(c.Along), middle)))
        {
            var place = line.PointAt(corner.Along);
            if (places.HasWithin(place, apart)) continue;
            places.Add(place);
            kept.Add(corner);
        }

        return kept;
    }

    /// <summary>
    /// Ways along the line to its inside corners: left turns, since the air lies to the left. An arc that turns as much within
    /// half a spacing counts as one corner at its middle.
    /// </summary>
    private IEnumerable<(double Along, double Turn)> Turns(double spacing)
    {
        var pieces = line.Loop.Segments;
        for (var i = 0; i < pieces.Length; i++)
        {
            var (before, segment) = (pieces[(i + pieces.Length - 1) % pieces.Length], pieces[i]);
            if (before.DirectionAt(1).AngleTo(segment.DirectionAt(0)) is var turn && turn >= CornerTurn)
                yield return (line.StartOf(i), turn);
            if (segment.Sweep >= CornerTurn && segment.Length <= spacing / 2)
                yield return (line.StartOf(i) + segment.Length / 2, segment.Sweep);
        }
    }
}
