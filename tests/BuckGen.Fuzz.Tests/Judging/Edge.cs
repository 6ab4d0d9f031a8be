using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Judging;

/// <summary>
/// A line or arc with school geometry of its own: how far a point is from it, and what it adds to the winding round a point.
/// </summary>
internal readonly struct Edge
{
    /// <summary>An arc that rises less than this above its chord, mm, is judged as the chord.</summary>
    private const double Flat = 1e-8;

    private readonly Vec2 centre;
    private readonly Vec2 towardMiddle;
    private readonly double radius;
    private readonly double cosineOfHalf;
    private readonly int turn;

    public Edge(Vec2 start, Vec2 end, double bulge)
    {
        (Start, End) = (start, end);
        var chord = end - start;
        var sagitta = bulge * chord.Length / 2;
        if (Math.Abs(sagitta) >= Flat)
        {
            // The centre lies on the chord's bisector; the arc of a positive bulge runs counter-clockwise, to the right of its
            // chord.
            (turn, radius) = (Math.Sign(bulge), chord.Length * (1 + bulge * bulge) / (4 * Math.Abs(bulge)));
            var right = new Vec2(chord.Y, -chord.X) * (1 / chord.Length);
            Middle = (start + end) * 0.5 + right * sagitta;
            towardMiddle = right * turn;
            centre = Middle - towardMiddle * radius;
            cosineOfHalf = Math.Cos(2 * Math.Atan(Math.Abs(bulge)));
        }
        else Middle = (start + end) * 0.5;

        Box = Grown(Bounds.FromCorners(start, end));
    }

    public Vec2 Start { get; }

    public Vec2 End { get; }

    /// <summary>The point half-way along.</summary>
    public Vec2 Middle { get; }

    public Bounds Box { get; }

    public double Length => turn == 0 ? (End - Start).Length : 2 * radius * Math.Acos(Math.Clamp(cosineOfHalf, -1, 1));

    /// <summary>Share of the area by Green's theorem, measured from an origin, mm².</summary>
    public double AreaFrom(Vec2 origin)
    {
        var triangle = (Start - origin).Cross(End - origin) / 2;
        if (turn == 0) return triangle;
        var sweep = 2 * Math.Acos(Math.Clamp(cosineOfHalf, -1, 1));
        return triangle + turn * radius * radius * (sweep - Math.Sin(sweep)) / 2;
    }

    /// <summary>Direction of travel at the middle.</summary>
    public Vec2 Along => (End - Start).Unit();

    public double DistanceTo(Vec2 p)
    {
        if (turn != 0)
        {
            var away = p - centre;
            if (away.Dot(towardMiddle) >= away.Length * cosineOfHalf) return Math.Abs(away.Length - radius);
            return Math.Min(p.DistanceTo(Start), p.DistanceTo(End));
        }

        var chord = End - Start;
        var t = Math.Clamp((p - Start).Dot(chord) / Math.Max(chord.LengthSquared, double.Epsilon), 0, 1);
        return p.DistanceTo(Start + chord * t);
    }

    /// <summary>
    /// The chord's crossing of the ray to the right of the point, and a whole turn more for a point between arc and chord.
    /// </summary>
    public int WindingAround(Vec2 p)
    {
        if (p.Y < Box.MinY || p.Y > Box.MaxY || p.X > Box.MaxX) return 0;
        var side = (End - Start).Cross(p - Start);
        var winding = Start.Y <= p.Y
            ? End.Y > p.Y && side > 0 ? 1 : 0
            : End.Y <= p.Y && side < 0 ? -1 : 0;
        var isBetween = turn != 0 && side * turn < 0 && p.DistanceTo(centre) < radius;
        return isBetween ? winding + turn : winding;
    }

    private Bounds Grown(Bounds box)
    {
        if (turn == 0) return box;
        ReadOnlySpan<Vec2> compass = [new(radius, 0), new(0, radius), new(-radius, 0), new(0, -radius)];
        foreach (var direction in compass)
            if (direction.Dot(towardMiddle) >= radius * cosineOfHalf) box = With(box, centre + direction);
        return box;
    }

    private static Bounds With(Bounds box, Vec2 p) =>
        new(Math.Min(box.MinX, p.X), Math.Min(box.MinY, p.Y), Math.Max(box.MaxX, p.X), Math.Max(box.MaxY, p.Y));
}
