namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// A part of the plane where no point of the offset can lie, because it is nearer to the outline than the distance.
/// </summary>
internal abstract class ForbiddenZone
{
    public abstract Bounds Bounds { get; }

    /// <summary>True when the point lies inside by more than <see cref="Precision.Depth"/>.</summary>
    public abstract bool Contains(Vec2 p);

    /// <summary>True when the straight way between two points of the zone never leaves it.</summary>
    public abstract bool IsConvex { get; }

    /// <summary>Adds the parameters at which a piece crosses the zone's edge.</summary>
    public abstract void AddCrossings(in Carrier piece, ref ParameterList found);
}

/// <summary>Everything nearer to one line or arc of the outline than the offset distance.</summary>
internal sealed class NearSegment(Segment source, double distance) : ForbiddenZone
{
    private readonly Carrier carrier = new(source);

    public override Bounds Bounds { get; } = source.Bounds.Grown(distance);

    public override bool IsConvex => !carrier.IsArc;

    public override bool Contains(Vec2 p) => carrier.DistanceTo(p) < distance - Precision.Depth;

    public override void AddCrossings(in Carrier piece, ref ParameterList found)
    {
        Intersections.WithCircle(piece, source.Start, distance, ref found);
        Intersections.WithCircle(piece, source.End, distance, ref found);
        if (carrier.IsArc)
        {
            Intersections.WithCircle(piece, carrier.Centre, carrier.Radius + distance, ref found);
            Intersections.WithCircle(piece, carrier.Centre, Math.Abs(carrier.Radius - distance), ref found);
        }
        else
        {
            var aside = carrier.Chord.Left * (distance / carrier.ChordLength);
            Intersections.WithLine(piece, source.Start + aside, carrier.Chord, ref found);
            Intersections.WithLine(piece, source.Start - aside, carrier.Chord, ref found);
        }
    }
}

/// <summary>The wedge that a mitre adds outside a corner.</summary>
/// <param name="corners">The wedge's corners, counter-clockwise and convex.</param>
internal sealed class InsideMitre(Vec2[] corners) : ForbiddenZone
{
    public override Bounds Bounds { get; } = corners.Aggregate(Bounds.Nothing, (b, p) => b.With(p));

    public override bool IsConvex => true;

    public override bool Contains(Vec2 p)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            var edge = corners[(i + 1) % corners.Length] - corners[i];
            if (edge.Cross(p - corners[i]) <= Precision.Depth * edge.Length) return false;
        }

        return true;
    }

    public override void AddCrossings(in Carrier piece, ref ParameterList found)
    {
        for (var i = 0; i < corners.Length; i++)
            Intersections.WithLine(piece, corners[i], corners[(i + 1) % corners.Length] - corners[i], ref found);
    }
}
