namespace BuckGen.Geometry;

/// <summary>A point or a displacement in the plane, in millimetres; x to the right, y up. Equality is exact.</summary>
/// <param name="X">To the right, mm.</param>
/// <param name="Y">Up, mm.</param>
public readonly record struct Vec2(double X, double Y)
{
    /// <summary>Length of the displacement, mm.</summary>
    public double Length => Math.Sqrt(X * X + Y * Y);

    /// <summary>Square of the length, mm².</summary>
    public double LengthSquared => X * X + Y * Y;

    /// <summary>True when both coordinates are ordinary numbers.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y);

    /// <summary>The displacement turned a quarter turn counter-clockwise.</summary>
    public Vec2 Left => new(-Y, X);

    /// <summary>The same direction with length 1; a zero displacement gives not-a-number.</summary>
    public Vec2 Unit()
    {
        var length = Length;
        return new(X / length, Y / length);
    }

    /// <summary>The displacement turned counter-clockwise.</summary>
    /// <param name="radians">Angle of the turn in radians.</param>
    public Vec2 Turned(double radians)
    {
        var (sin, cos) = Math.SinCos(radians);
        return new(X * cos - Y * sin, X * sin + Y * cos);
    }

    /// <summary>Dot product, mm².</summary>
    public double Dot(Vec2 other) => X * other.X + Y * other.Y;

    /// <summary>Cross product, mm²; positive when <paramref name="other"/> lies to the left.</summary>
    public double Cross(Vec2 other) => X * other.Y - Y * other.X;

    /// <summary>Distance to another point, mm.</summary>
    public double DistanceTo(Vec2 other) => (other - this).Length;

    /// <summary>The signed angle, in radians from -π to π, that turns this direction into the other.</summary>
    internal double AngleTo(Vec2 other) => Math.Atan2(Cross(other), Dot(other));

    /// <summary>The point half-way to another.</summary>
    public Vec2 MidpointTo(Vec2 other) => new((X + other.X) / 2, (Y + other.Y) / 2);

    /// <summary>Both coordinates with three decimals, for messages: "(12.500, 3.000)".</summary>
    public override string ToString() =>
        FormattableString.Invariant($"({Math.Round(X, 3) + 0.0:F3}, {Math.Round(Y, 3) + 0.0:F3})");

    /// <summary>Sum.</summary>
    public static Vec2 operator +(Vec2 a, Vec2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>Difference.</summary>
    public static Vec2 operator -(Vec2 a, Vec2 b) => new(a.X - b.X, a.Y - b.Y);

    /// <summary>The opposite displacement.</summary>
    public static Vec2 operator -(Vec2 a) => new(-a.X, -a.Y);

    /// <summary>The displacement stretched by a factor.</summary>
    public static Vec2 operator *(Vec2 a, double factor) => new(a.X * factor, a.Y * factor);
}
