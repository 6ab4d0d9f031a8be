namespace BuckGen.Geometry;

/// <summary>A point or a displacement in space, in millimetres; z up. Equality is exact.</summary>
/// <param name="X">To the right, mm.</param>
/// <param name="Y">To the back, mm.</param>
/// <param name="Z">Up, mm.</param>
public readonly record struct Vec3(double X, double Y, double Z)
{
    /// <summary>Length of the displacement, mm.</summary>
    public double Length => Math.Sqrt(LengthSquared);

    /// <summary>Square of the length, mm².</summary>
    public double LengthSquared => Dot(this);

    /// <summary>The point seen from above.</summary>
    public Vec2 Plan => new(X, Y);

    /// <summary>Dot product, mm².</summary>
    public double Dot(Vec3 other) => X * other.X + Y * other.Y + Z * other.Z;

    /// <summary>Cross product, mm².</summary>
    public Vec3 Cross(Vec3 other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    /// <summary>Sum.</summary>
    public static Vec3 operator +(Vec3 a, Vec3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Vec3 operator -(Vec3 a, Vec3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The displacement stretched by a factor.</summary>
    public static Vec3 operator *(Vec3 a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);
}
