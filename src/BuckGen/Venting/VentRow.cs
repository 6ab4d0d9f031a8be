using BuckGen.Geometry;

namespace BuckGen.Venting;

/// <summary>A closed line at one distance from the walls, on which vents stand in a row.</summary>
internal sealed class VentRow
{
    /// <summary>A turn of the line sharper than this, radians, is a corner; air gathers there.</summary>
    private const double CornerTurn = 30 * Math.PI / 180;

    private readonly Loop line;
    private readonly double[] starts;

    public VentRow(Loop line)
    {
        this.line = line;
        starts = new double[line.Segments.Length];
        for (var i = 1; i < starts.Length; i++) starts[i] = starts[i - 1] + line.Segments[i - 1].Length;
    }

    /// <summary>The point a way along the line, mm, counted round and round.</summary>
    public Vec2 PointAt(double along)
    {
        var wrapped = along % line.Length;
        if (wrapped < 0) wrapped += line.Length;
        var i = Array.BinarySearch(starts, wrapped);
        if (i < 0) i = ~i - 1;
        return line.Segments[i].PointAt(Math.Min(1, (wrapped - starts[i]) / line.Segments[i].Length));
    }

    /// <summary>Corners first, then evenly between them, nowhere farther apart than the spacing.</summary>
    public IEnumerable<VentWish> Wishes(double spacing)
    {
        var corners = Corners(spacing).ToList();
        foreach (var along in corners) yield return new(PointAt(along), VentReason.Corner, this, along);
        if (corners.Count == 0) corners.Add(Farthest());
        for (var c = 0; c < corners.Count; c++)
        {
            var end = c + 1 < corners.Count ? corners[c + 1] : corners[0] + line.Length;
            var count = (int)Math.Ceiling((end - corners[c]) / spacing - 1e-9);
            for (var k = 1; k < count; k++)
            {
                var along = corners[c] + (end - corners[c]) * k / count;
                yield return new(PointAt(along), VentReason.Wall, this, along);
            }
        }

        if (!Corners(spacing).Any()) yield return new(PointAt(corners[0]), VentReason.Wall, this, corners[0]);
    }

    /// <summary>
    /// Ways along the line to its inside corners: left turns, since the air lies to the left; an arc that turns as much within
    /// half a spacing counts as one corner at its middle.
    /// </summary>
    private IEnumerable<double> Corners(double spacing)
    {
        for (var i = 0; i < line.Segments.Length; i++)
        {
            var (before, segment) = (line.Segments[(i + line.Segments.Length - 1) % line.Segments.Length], line.Segments[i]);
            if (before.DirectionAt(1).AngleTo(segment.DirectionAt(0)) >= CornerTurn) yield return starts[i];
            if (segment.Sweep >= CornerTurn && segment.Length <= spacing / 2) yield return starts[i] + segment.Length / 2;
        }
    }

    /// <summary>Where a row without corners begins: at the piece whose middle lies farthest from the line's own middle.</summary>
    /// <remarks>The choice turns with the outline; of equals the first drawn is taken.</remarks>
    private double Farthest()
    {
        var middle = line.Segments.Aggregate(new Vec2(0, 0), (sum, s) => sum + s.PointAt(0.5) * (s.Length / line.Length));
        var best = Enumerable.Range(0, line.Segments.Length).MaxBy(i => Math.Round((line.Segments[i].PointAt(0.5) - middle).LengthSquared, 6));
        return starts[best] + line.Segments[best].Length / 2;
    }
}
