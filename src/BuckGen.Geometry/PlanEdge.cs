namespace BuckGen.Geometry;

/// <summary>A piece of a region's edge, prepared for the distance and the side of a point.</summary>
internal readonly struct PlanEdge
{
    private readonly Vec2 start, end, direction, centre, middle, startOutward, endOutward;
    private readonly double length, radius, reach;
    private readonly bool isArc;

    /// <param name="piece">The piece, with the region to its left.</param>
    /// <param name="before">The piece that ends where this one starts.</param>
    /// <param name="after">The piece that starts where this one ends.</param>
    public PlanEdge(Segment piece, Segment before, Segment after)
    {
        (start, end, isArc) = (piece.Start, piece.End, piece.IsArc);
        (direction, length) = (piece.Chord.Unit(), piece.Chord.Length);
        // At a corner the side is that of the two normals' sum.
        startOutward = -(before.DirectionAt(1).Left + piece.DirectionAt(0).Left);
        endOutward = -(piece.DirectionAt(1).Left + after.DirectionAt(0).Left);
        if (!isArc) return;
        centre = piece.Centre;
        middle = (piece.PointAt(0.5) - centre).Unit();
        radius = piece.Bulge > 0 ? piece.Radius : -piece.Radius;
        reach = Math.Cos(piece.Sweep / 2);
    }

    /// <summary>Square of the distance from a point, mm².</summary>
    public double SquareTo(Vec2 p) =>
        IsBeside(p, out var along) ? SquareBeside(p) : along <= 0 ? (p - start).LengthSquared : (p - end).LengthSquared;

    /// <summary>Distance from a point where this is the nearest piece, mm; negative inside the region.</summary>
    public double SignedTo(Vec2 p)
    {
        if (IsBeside(p, out var along))
        {
            if (!isArc) return -direction.Cross(p - start);
            var away = p.DistanceTo(centre);
            return radius > 0 ? away - radius : -radius - away;
        }
        var (from, outward) = along <= 0 ? (p - start, startOutward) : (p - end, endOutward);
        return from.Dot(outward) < 0 ? -from.Length : from.Length;
    }

    private double SquareBeside(Vec2 p)
    {
        var distance = isArc ? p.DistanceTo(centre) - Math.Abs(radius) : direction.Cross(p - start);
        return distance * distance;
    }

    /// <summary>Whether the nearest point lies between the ends; else which end it is.</summary>
    /// <param name="p">The point.</param>
    /// <param name="along">Up to 0 for the start, more for the end.</param>
    private bool IsBeside(Vec2 p, out double along)
    {
        if (!isArc)
        {
            along = direction.Dot(p - start);
            return along > 0 && along < length;
        }
        var from = p - centre;
        along = (p - start).LengthSquared - (p - end).LengthSquared;
        return from.Dot(middle) > reach * from.Length;
    }
}
