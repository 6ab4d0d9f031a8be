namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// The parallel lines, concentric arcs and corner joins of an outline before anything too near to it is removed,
/// together with the zones that remove it.
/// </summary>
internal sealed class RawOffset
{
    private readonly NearSegment?[] near;

    private RawOffset(OffsetOutline outline, double distance) =>
        (Outline, Distance, near) = (outline, Math.Abs(distance), new NearSegment?[outline.Carriers.Length]);

    /// <summary>What was moved.</summary>
    public OffsetOutline Outline { get; }

    /// <summary>How far, mm, without a sign.</summary>
    public double Distance { get; }

    /// <summary>Directed pieces, material to the left.</summary>
    public List<RawPiece> Pieces { get; } = [];

    /// <summary>The insides of the mitres; no point of the offset lies there.</summary>
    public List<InsideMitre> Wedges { get; } = [];

    /// <summary>Everything nearer to one piece of the outline than the distance.</summary>
    public NearSegment ZoneOf(int piece) => near[piece] ??= new(Outline.Carriers[piece], Distance);

    /// <summary>Builds the raw offset of an outline.</summary>
    public static RawOffset Create(OffsetOutline outline, double distance, CornerJoin join, MovedSides moved = MovedSides.Drawn)
    {
        var raw = new RawOffset(outline, distance);
        foreach (var (first, count) in outline.Loops)
        {
            var carriers = outline.Carriers.AsSpan(first, count);
            raw.AddLoop(carriers, i => first + i, distance, join);
            if (moved == MovedSides.Drawn) continue;
            // Drawn the other way the pieces come in the opposite order, but they stay near to the same segments.
            var reversed = new Carrier[count];
            for (var i = 0; i < count; i++) reversed[i] = new(carriers[count - 1 - i].Segment.Reversed());
            raw.AddLoop(reversed, i => first + count - 1 - i, distance, join);
        }

        return raw;
    }

    private void AddLoop(ReadOnlySpan<Carrier> carriers, Func<int, int> zoneOf, double distance, CornerJoin join)
    {
        var count = carriers.Length;
        var starts = new Vec2[count];
        var ends = new Vec2[count];
        for (var i = 0; i < count; i++)
        {
            starts[i] = Aside(carriers[i].Start, carriers[i].StartDirection, distance);
            ends[i] = Aside(carriers[i].Segment.End, carriers[i].EndDirection, distance);
        }

        for (var i = 0; i < count; i++)
        {
            var next = (i + 1) % count;
            var turn = Turn(carriers[i], carriers[next], distance);
            if (Math.Abs(turn) < Precision.SmoothTurn(Math.Abs(distance)))
                ends[i] = starts[next] = SmoothMeeting(carriers[next].Start, ends[i], starts[next], turn);
            else if (turn > 0 == distance > 0)
                AddJoin(carriers[next].Start, ends[i], starts[next], turn, distance, join, zoneOf(i));
        }

        for (var i = 0; i < count; i++)
        {
            var segment = carriers[i].Segment;
            // An arc offset past its own centre has no point at the distance.
            if (segment.IsArc && segment.Radius + distance * Math.Sign(segment.Bulge) <= Precision.MinPieceLength) continue;
            var piece = Concentric(segment, starts[i], ends[i]);
            if (piece.Length > Precision.MinPieceLength) Pieces.Add(new(piece, zoneOf(i), RawPieceKind.Side));
        }
    }

    /// <summary>The line, or the arc round the same centre, between two points beside a segment.</summary>
    private static Segment Concentric(Segment segment, Vec2 start, Vec2 end)
    {
        if (!segment.IsArc) return new(start, end);
        // The ends of smooth corners have been moved a hair along the circle; the angle follows them.
        var (centre, half) = (segment.Centre, segment.PointAt(0.5) - segment.Centre);
        return Segment.Arc(start, end, (start - centre).AngleTo(half) + half.AngleTo(end - centre));
    }

    /// <summary>Where both sides of a nearly smooth corner meet: at the full distance from either side.</summary>
    private static Vec2 SmoothMeeting(Vec2 corner, Vec2 from, Vec2 to, double turn)
    {
        var cos = Math.Cos(turn / 2);
        return corner + (from.MidpointTo(to) - corner) * (1 / (cos * cos));
    }

    private void AddJoin(Vec2 corner, Vec2 from, Vec2 to, double turn, double distance, CornerJoin join, int zone)
    {
        if (join.Corners == Corners.Round)
        {
            Pieces.Add(new(Segment.Arc(from, to, turn), zone, RawPieceKind.RoundJoin));
            return;
        }

        Vec2[] path = [from, .. MitreTip(corner, from, to, turn, Math.Abs(distance), join.MitreLimit), to];
        for (var i = 0; i + 1 < path.Length; i++)
            if (path[i].DistanceTo(path[i + 1]) > Precision.MinPieceLength)
                Pieces.Add(new(new(path[i], path[i + 1]), zone, RawPieceKind.Mitre));
        Vec2[] wedge = [corner, .. path];
        if (turn < 0) Array.Reverse(wedge);
        Wedges.Add(new(wedge));
    }

    /// <summary>The one sharp point of a mitre, or the two points where it is cut off at the limit.</summary>
    private static Vec2[] MitreTip(Vec2 corner, Vec2 from, Vec2 to, double turn, double distance, double limit)
    {
        var middle = (from - corner).Turned(turn / 2).Unit();
        var (sin, cos) = Math.SinCos(Math.Abs(turn) / 2);
        if (distance / cos <= limit * distance) return [corner + middle * (distance / cos)];
        // Cut square to the middle line; never nearer than the plain bevel from end to end.
        var cut = Math.Max(limit * distance, distance * cos);
        var half = (distance - cut * cos) / sin;
        var across = middle.Left * (half * Math.Sign(turn));
        return [corner + middle * cut - across, corner + middle * cut + across];
    }

    private static Vec2 Aside(Vec2 p, Vec2 direction, double distance) => p - direction.Left * distance;

    private static double Turn(Carrier carrierBefore, Carrier carrierAfter, double distance)
    {
        var turn = carrierBefore.EndDirection.AngleTo(carrierAfter.StartDirection);
        if (Math.Abs(turn) < Math.PI - 1e-6) return turn;
        var (before, after) = (carrierBefore.Segment, carrierAfter.Segment);
        // A cusp: the directions are opposite, so look a little way along both sides to tell a point from a notch.
        var (along, back) = (before.End - before.PointAt(0.9), after.PointAt(0.1) - after.Start);
        var lookedAt = along.Cross(back);
        // Out and straight back the two look alike. A point needs its join; round a notch it lies on the wrong side and is left
        // out.
        var side = Math.Abs(lookedAt) > 1e-9 * along.Length * back.Length ? lookedAt : distance;
        return side > 0 == turn > 0 ? turn : turn - 2 * Math.PI * Math.Sign(turn);
    }
}
