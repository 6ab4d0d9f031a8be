namespace BuckGen.Geometry;

/// <summary>A straight line or a circular arc from one point to another.</summary>
/// <param name="Start">Where it starts.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Bulge">Tangent of a quarter of the arc's angle; positive turns left (counter-clockwise), 0 is a line.</param>
public readonly record struct Segment(Vec2 Start, Vec2 End, double Bulge = 0)
{
    /// <summary>True for an arc, false for a line.</summary>
    public bool IsArc => Bulge != 0;

    /// <summary>The straight way from start to end.</summary>
    public Vec2 Chord => End - Start;

    /// <summary>The arc's signed angle in radians, positive counter-clockwise; 0 for a line.</summary>
    public double Sweep => 4 * Math.Atan(Bulge);

    /// <summary>Radius of the arc, mm; infinite for a line.</summary>
    public double Radius => Chord.Length * (1 + Bulge * Bulge) / (4 * Math.Abs(Bulge));

    /// <summary>Centre of the arc; meaningless for a line.</summary>
    public Vec2 Centre => Start.MidpointTo(End) + Chord.Left * ((1 - Bulge * Bulge) / (4 * Bulge));

    /// <summary>Length along the piece, mm.</summary>
    public double Length => IsArc ? Radius * Math.Abs(Sweep) : Chord.Length;

    /// <summary>Height of the arc above its chord, mm.</summary>
    public double Sagitta => Math.Abs(Bulge) * Chord.Length / 2;

    /// <summary>The piece walked the other way.</summary>
    internal Segment Reversed() => new(End, Start, -Bulge);

    /// <summary>The arc round a centre from one point on the circle to another.</summary>
    /// <param name="start">Where it starts.</param>
    /// <param name="end">Where it ends.</param>
    /// <param name="sweep">Signed angle in radians, between -2π and 2π, ends excluded.</param>
    public static Segment Arc(Vec2 start, Vec2 end, double sweep) => new(start, end, Math.Tan(sweep / 4));

    /// <summary>The point a part of the way along, by length.</summary>
    /// <param name="t">0 at the start, 1 at the end.</param>
    public Vec2 PointAt(double t)
    {
        if (!IsArc) return Start + Chord * t;
        if (t == 1) return End;
        // Chord of the partial arc: needs no centre, so flat arcs lose no digits.
        var sweep = Sweep;
        var half = t * sweep / 2;
        return Start + Chord.Turned(half - sweep / 2) * (Math.Sin(half) / Math.Sin(sweep / 2));
    }

    /// <summary>The unit direction of travel.</summary>
    /// <param name="t">0 at the start, 1 at the end.</param>
    internal Vec2 DirectionAt(double t) => IsArc ? Chord.Turned((t - 0.5) * Sweep).Unit() : Chord.Unit();

    /// <summary>The part of the piece between two parameters.</summary>
    /// <param name="t0">Start, 0 to 1.</param>
    /// <param name="t1">End, 0 to 1, at or after the start.</param>
    public Segment Part(double t0, double t1) =>
        new(PointAt(t0), PointAt(t1), IsArc ? Math.Tan((t1 - t0) * Sweep / 4) : 0);

    /// <summary>The parameter, not limited to 0 to 1, whose point lies nearest on the whole line or circle.</summary>
    internal double ParameterOf(Vec2 p)
    {
        if (!IsArc) return (p - Start).Dot(Chord) / Chord.LengthSquared;
        var sweep = Sweep;
        var angle = (Start - Centre).AngleTo(p - Centre);
        // Measured from the middle of the arc, so that both ends lie far from the cut at half a turn.
        return 0.5 + Math.IEEERemainder(angle - sweep / 2, 2 * Math.PI) / sweep;
    }

    /// <summary>The parameter, from 0 to 1, of the point of this piece nearest to a given one.</summary>
    internal double NearestParameter(Vec2 p)
    {
        var t = ParameterOf(p);
        if (t is >= 0 and <= 1) return t;
        return (p - Start).LengthSquared <= (p - End).LengthSquared ? 0 : 1;
    }

    /// <summary>Distance from a point to this piece, mm.</summary>
    internal double DistanceTo(Vec2 p)
    {
        var fromStart = p - Start;
        if (IsArc)
        {
            var centre = Centre;
            if (IsPassed(Start - centre, p - centre, End - centre)) return Math.Abs(p.DistanceTo(centre) - Radius);
        }
        else
        {
            var (chord, along) = (Chord, fromStart.Dot(Chord));
            if (along >= 0 && along <= chord.LengthSquared && chord.LengthSquared > 0)
                return Math.Abs(fromStart.Cross(chord)) / chord.Length;
        }

        return Math.Sqrt(Math.Min(fromStart.LengthSquared, (p - End).LengthSquared));
    }

    /// <summary>True when the arc passes through a direction from its centre, ends included.</summary>
    /// <param name="toStart">From the centre to its start.</param>
    /// <param name="direction">The direction from the centre.</param>
    /// <param name="toEnd">From the centre to its end.</param>
    internal bool IsPassed(Vec2 toStart, Vec2 direction, Vec2 toEnd)
    {
        if (Bulge < 0) (toStart, toEnd) = (toEnd, toStart);
        return Math.Abs(Bulge) <= 1
            ? toStart.Cross(direction) >= 0 && direction.Cross(toEnd) >= 0
            : toEnd.Cross(direction) <= 0 || direction.Cross(toStart) <= 0;
    }

    /// <summary>The smallest upright rectangle round the piece.</summary>
    public Bounds Bounds
    {
        get
        {
            var bounds = Bounds.FromCorners(Start, End);
            if (!IsArc) return bounds;
            var (centre, radius) = (Centre, Radius);
            var (toStart, toEnd) = (Start - centre, End - centre);
            ReadOnlySpan<Vec2> extremes = [new(radius, 0), new(0, radius), new(-radius, 0), new(0, -radius)];
            foreach (var extreme in extremes)
                if (IsPassed(toStart, extreme, toEnd)) bounds = bounds.With(centre + extreme);
            return bounds;
        }
    }

    /// <summary>This piece's share of the area of a loop (Green's theorem), mm²; counter-clockwise counts positive.</summary>
    public double AreaShare
    {
        get
        {
            var triangle = Start.Cross(End) / 2;
            if (!IsArc) return triangle;
            var (radius, sweep) = (Radius, Sweep);
            return triangle + radius * radius * (sweep - Math.Sin(sweep)) / 2;
        }
    }
}
