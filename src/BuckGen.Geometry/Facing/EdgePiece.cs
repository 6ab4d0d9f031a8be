namespace BuckGen.Geometry.Facing;

/// <summary>A line or arc of a region's edge with the corner at its start; the region lies to its left.</summary>
/// <param name="Segment">The line or arc.</param>
/// <param name="Loop">The number of its loop, in the order of <see cref="Region.Loops"/>.</param>
/// <param name="Turn">
/// The turn at its start, radians: positive at a corner of the region that sticks out, negative at one that goes in.
/// </param>
internal readonly record struct EdgePiece(Segment Segment, int Loop, double Turn)
{
    /// <summary>From here on a turn is so nearly a half turn that rounding decides its sign.</summary>
    private const double HalfTurn = Math.PI - 1e-6;

    /// <summary>The angle of the way into the region at the piece's start, radians.</summary>
    private double NormalAtStart => DirectionRange.AngleOf(Segment.DirectionAt(0)) + Math.PI / 2;

    /// <summary>The ways into the region along the piece.</summary>
    public DirectionRange Normals =>
        new(DirectionRange.AngleOf(Segment.DirectionAt(0.5)) + Math.PI / 2, Math.Abs(Segment.Sweep) / 2);

    /// <summary>The ways into the region between the piece before and this one.</summary>
    public DirectionRange NormalsOfCorner => new(NormalAtStart - Turn / 2, Math.Abs(Turn) / 2);

    /// <summary>The pieces of a region, loop by loop.</summary>
    public static EdgePiece[] FromRegion(Region region)
    {
        var pieces = new List<EdgePiece>();
        foreach (var (number, loop) in region.Loops.Index())
            for (var i = 0; i < loop.Segments.Length; i++)
                pieces.Add(new(loop.Segments[i], number, TurnBetween(loop.Segments[i == 0 ? ^1 : i - 1], loop.Segments[i])));
        return [.. pieces];
    }

    private static double TurnBetween(Segment before, Segment after)
    {
        var turn = before.DirectionAt(1).AngleTo(after.DirectionAt(0));
        if (Math.Abs(turn) < HalfTurn) return turn;
        // At a tip of no angle the tangents say nothing about which side is open; points a little away from the tip do.
        var step = Math.Min(before.Length, after.Length) / 4;
        var (from, to) = (before.PointAt(1 - step / before.Length), after.PointAt(step / after.Length));
        return Math.CopySign(turn, (after.Start - from).AngleTo(to - after.Start));
    }
}
