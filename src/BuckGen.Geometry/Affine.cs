namespace BuckGen.Geometry;

/// <summary>A map of the plane that keeps lines straight: x' = A·x + C·y + E, y' = B·x + D·y + F.</summary>
/// <param name="A">First coefficient of x'.</param>
/// <param name="B">First coefficient of y'.</param>
/// <param name="C">Second coefficient of x'.</param>
/// <param name="D">Second coefficient of y'.</param>
/// <param name="E">Shift of x', mm.</param>
/// <param name="F">Shift of y', mm.</param>
public sealed record Affine(double A, double B, double C, double D, double E, double F)
{
    /// <summary>The map that changes nothing.</summary>
    public static Affine Identity { get; } = new(1, 0, 0, 1, 0, 0);

    /// <summary>Signed factor by which areas grow.</summary>
    public double Determinant => A * D - B * C;

    /// <summary>True when left and right change places.</summary>
    public bool Mirrors => Determinant < 0;

    /// <summary>A shift.</summary>
    public static Affine Translation(Vec2 by) => new(1, 0, 0, 1, by.X, by.Y);

    /// <summary>A counter-clockwise turn round a point.</summary>
    /// <param name="radians">Angle in radians.</param>
    /// <param name="about">The point that stays.</param>
    public static Affine Rotation(double radians, Vec2 about)
    {
        var (sin, cos) = Math.SinCos(radians);
        return new(cos, sin, -sin, cos, about.X - cos * about.X + sin * about.Y, about.Y - sin * about.X - cos * about.Y);
    }

    /// <summary>An even scaling about a point.</summary>
    /// <param name="factor">Factor, not 0.</param>
    /// <param name="about">The point that stays.</param>
    internal static Affine Scaling(double factor, Vec2 about) =>
        new(factor, 0, 0, factor, about.X * (1 - factor), about.Y * (1 - factor));

    /// <summary>A reflection in the line through a point.</summary>
    /// <param name="about">A point of the line.</param>
    /// <param name="direction">Direction of the line.</param>
    internal static Affine Reflection(Vec2 about, Vec2 direction)
    {
        var u = direction.Unit();
        var (c, s) = (u.X * u.X - u.Y * u.Y, 2 * u.X * u.Y);
        return new(c, s, s, -c, about.X - c * about.X - s * about.Y, about.Y - s * about.X + c * about.Y);
    }

    /// <summary>The image of a point.</summary>
    public Vec2 Apply(Vec2 p) => new(A * p.X + C * p.Y + E, B * p.X + D * p.Y + F);

    /// <summary>The image of a displacement: the shift left out.</summary>
    internal Vec2 ApplyToDirection(Vec2 v) => new(A * v.X + C * v.Y, B * v.X + D * v.Y);

    /// <summary>First this map, then another.</summary>
    internal Affine Then(Affine next)
    {
        ArgumentNullException.ThrowIfNull(next);
        var (x, y, shift) = (next.ApplyToDirection(new(A, B)), next.ApplyToDirection(new(C, D)), next.Apply(new(E, F)));
        return new(x.X, x.Y, y.X, y.Y, shift.X, shift.Y);
    }
}
