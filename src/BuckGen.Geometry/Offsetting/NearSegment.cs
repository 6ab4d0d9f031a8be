namespace BuckGen.Geometry.Offsetting;

/// <summary>Everything nearer to one line or arc of the outline than the offset distance.</summary>
/// <param name="source">The line or arc.</param>
/// <param name="distance">The distance, mm, above 0.</param>
internal sealed class NearSegment(Carrier source, double distance) : ForbiddenZone
{
    public override Bounds Bounds { get; } = source.Bounds.Grown(distance);

    public override bool IsConvex => !source.IsArc;

    public override bool Contains(Vec2 p) => source.DistanceTo(p) < distance - Precision.Depth;

    public override void AddCrossings(Carrier piece, ref ParameterList found)
    {
        Intersections.WithCircle(piece, source.Start, distance, ref found);
        Intersections.WithCircle(piece, source.Segment.End, distance, ref found);
        if (source.IsArc)
        {
            Intersections.WithCircle(piece, source.Centre, source.Radius + distance, ref found);
            Intersections.WithCircle(piece, source.Centre, Math.Abs(source.Radius - distance), ref found);
        }
        else
        {
            var aside = source.Chord.Left * (distance / source.ChordLength);
            Intersections.WithLine(piece, source.Start + aside, source.Chord, ref found);
            Intersections.WithLine(piece, source.Start - aside, source.Chord, ref found);
        }
    }
}
