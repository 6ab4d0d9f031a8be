namespace BuckGen.Geometry.Offsetting;

/// <summary>A segment with the values that the offset uses again and again, computed once.</summary>
internal sealed class Carrier
{
    private readonly Vec2 toStart, toEnd;

    public Carrier(Segment segment)
    {
        Segment = segment;
        (Start, Chord, IsArc) = (segment.Start, segment.Chord, segment.IsArc);
        ChordLength = Chord.Length;
        Bounds = segment.Bounds;
        (StartDirection, EndDirection) = (segment.DirectionAt(0), segment.DirectionAt(1));
        if (!IsArc) return;
        (Centre, Radius, Sweep) = (segment.Centre, segment.Radius, segment.Sweep);
        (toStart, toEnd) = (Start - Centre, segment.End - Centre);
    }

    public Segment Segment { get; }
    public Vec2 Start { get; }
    public Vec2 Chord { get; }
    public double ChordLength { get; }
    public Bounds Bounds { get; }
    public Vec2 StartDirection { get; }
    public Vec2 EndDirection { get; }
    public bool IsArc { get; }
    public Vec2 Centre { get; }
    public double Radius { get; }
    public double Sweep { get; }

    /// <summary>As <see cref="Segment.ParameterOf"/>.</summary>
    public double ParameterOf(Vec2 p)
    {
        if (!IsArc) return (p - Start).Dot(Chord) / (ChordLength * ChordLength);
        return 0.5 + Math.IEEERemainder(toStart.AngleTo(p - Centre) - Sweep / 2, 2 * Math.PI) / Sweep;
    }

    /// <summary>As <see cref="Segment.DistanceTo"/>.</summary>
    public double DistanceTo(Vec2 p)
    {
        var fromStart = p - Start;
        if (!IsArc)
        {
            var along = fromStart.Dot(Chord);
            if (along >= 0 && along <= ChordLength * ChordLength && ChordLength > 0)
                return Math.Abs(fromStart.Cross(Chord)) / ChordLength;
        }
        else if (Segment.IsPassed(toStart, p - Centre, toEnd)) return Math.Abs((p - Centre).Length - Radius);

        return Math.Sqrt(Math.Min(fromStart.LengthSquared, (p - Segment.End).LengthSquared));
    }
}
