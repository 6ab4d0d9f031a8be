namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// The half planes behind a moved piece. What of the outline lies in all of them keeps the distance from every point of the
/// piece, so it can remove nothing of it.
/// </summary>
/// <remarks>
/// A point of the piece stands at the distance over a tangent of what it was moved from. What lies behind that tangent lies no
/// nearer. Behind all tangents of an arc lies what is behind those at its ends and behind its chord, up to half a turn.
/// </remarks>
internal readonly struct Behind
{
    private const double MaxSweep = Math.PI - 1e-6;

    private readonly int count;
    private readonly HalfPlane first, second, third;

    private Behind(int count, HalfPlane first, HalfPlane second = default, HalfPlane third = default) =>
        (this.count, this.first, this.second, this.third) = (count, first, second, third);

    /// <summary>The half planes behind a piece; none behind mitres and arcs moved inward.</summary>
    /// <param name="piece">The moved piece.</param>
    /// <param name="source">What it was moved from, or the piece before the corner that it goes round.</param>
    public static Behind FromPiece(RawPiece piece, Carrier source)
    {
        var segment = piece.Segment;
        if (piece.IsMitre || (segment.IsArc && Math.Abs(segment.Sweep) > MaxSweep)) return default;
        if (piece.Kind == RawPieceKind.RoundJoin)
        {
            // Round the end of the source, or its start when the source was drawn the other way.
            var corner = segment.Centre.DistanceTo(source.Segment.End) < segment.Centre.DistanceTo(source.Start)
                ? source.Segment.End : source.Start;
            return new(2, new(corner, segment.Start - corner), new(corner, segment.End - corner));
        }

        if (!source.IsArc)
        {
            var away = source.Chord.Left;
            return new(1, new(source.Start, away.Dot(segment.Start - source.Start) > 0 ? away : -away));
        }

        if (segment.Radius < source.Radius) return default;
        var (start, end) = (source.Start, source.Segment.End);
        var outward = source.Segment.PointAt(0.5) - start.MidpointTo(end);
        return new(3, new(start, start - source.Centre), new(end, end - source.Centre), new(start, outward));
    }

    /// <summary>True when all of a rectangle lies behind.</summary>
    public bool Holds(in Bounds box) =>
        count > 0 && first.Holds(box) && (count < 2 || second.Holds(box)) && (count < 3 || third.Holds(box));

    /// <summary>True when all of a line lies behind; of an arc only its rectangle can tell.</summary>
    public bool Holds(Carrier piece) => piece.IsArc ? Holds(piece.Bounds) : Holds(piece.Start) && Holds(piece.Segment.End);

    private bool Holds(Vec2 p) =>
        count > 0 && first.Holds(p) && (count < 2 || second.Holds(p)) && (count < 3 || third.Holds(p));

    /// <summary>Everything that does not lie farther along a direction than a point.</summary>
    private readonly struct HalfPlane
    {
        // Far below the depth that counts as too near.
        private const double Rounding = Precision.Depth / 10;
        private readonly Vec2 normal;
        private readonly double limit;

        public HalfPlane(Vec2 point, Vec2 direction)
        {
            normal = direction.Unit();
            limit = normal.Dot(point) + Rounding;
        }

        public bool Holds(Vec2 p) => normal.Dot(p) <= limit;

        public bool Holds(in Bounds box) =>
            normal.X * (normal.X > 0 ? box.MaxX : box.MinX) + normal.Y * (normal.Y > 0 ? box.MaxY : box.MinY) <= limit;
    }
}
