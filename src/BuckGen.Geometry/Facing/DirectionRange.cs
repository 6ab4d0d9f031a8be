namespace BuckGen.Geometry.Facing;

/// <summary>All directions no farther than an angle from a middle one; radians.</summary>
/// <param name="Middle">The angle of the middle direction.</param>
/// <param name="Half">How far the range reaches to either side; π or more is every direction.</param>
internal readonly record struct DirectionRange(double Middle, double Half)
{
    /// <summary>Every direction.</summary>
    public static DirectionRange All { get; } = new(0, Math.PI);

    /// <summary>The opposite directions.</summary>
    public DirectionRange Opposite => this with { Middle = Middle + Math.PI };

    /// <summary>The angle of a direction.</summary>
    public static double AngleOf(Vec2 direction) => Math.Atan2(direction.Y, direction.X);

    /// <summary>The direction of an angle, with length 1.</summary>
    public static Vec2 Towards(double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new(cos, sin);
    }

    /// <summary>The signed way from the middle to an angle, -π to π.</summary>
    public double From(double angle) => Math.IEEERemainder(angle - Middle, 2 * Math.PI);

    /// <summary>How far an angle lies outside; 0 inside.</summary>
    public double Outside(double angle) => Math.Max(0, Math.Abs(From(angle)) - Half);

    /// <summary>The angle of the range that lies nearest to a given one.</summary>
    public double Nearest(double angle) => Middle + Math.Clamp(From(angle), -Half, Half);

    /// <summary>True when two ranges come as near to each other as a slack.</summary>
    public bool Intersects(DirectionRange other, double slack) => Math.Abs(From(other.Middle)) <= Half + other.Half + slack;

    /// <summary>A range that holds both.</summary>
    public DirectionRange With(DirectionRange other)
    {
        var way = From(other.Middle);
        var (low, high) = (Math.Min(-Half, way - other.Half), Math.Max(Half, way + other.Half));
        return high - low >= 2 * Math.PI ? All : new(Middle + (low + high) / 2, (high - low) / 2);
    }

    /// <summary>The directions in which a point of one rectangle may lie from a point of another.</summary>
    public static DirectionRange Between(Bounds a, Bounds b)
    {
        var way = new Bounds(b.MinX - a.MaxX, b.MinY - a.MaxY, b.MaxX - a.MinX, b.MaxY - a.MinY);
        if (way.Contains(new Vec2(0, 0))) return All;
        var middle = AngleOf(way.Centre);
        var range = new DirectionRange(middle, 0);
        ReadOnlySpan<Vec2> corners =
            [new(way.MinX, way.MinY), new(way.MaxX, way.MinY), new(way.MaxX, way.MaxY), new(way.MinX, way.MaxY)];
        var half = 0.0;
        foreach (var corner in corners) half = Math.Max(half, Math.Abs(range.From(AngleOf(corner))));
        return new(middle, half);
    }
}
