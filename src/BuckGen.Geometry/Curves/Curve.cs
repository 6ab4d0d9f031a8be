namespace BuckGen.Geometry.Curves;

/// <summary>A smooth piece of a drawing, before it is fitted with lines and arcs.</summary>
public abstract record Curve
{
    /// <summary>The point at a parameter.</summary>
    /// <param name="t">0 at the start, 1 at the end.</param>
    public abstract Vec2 PointAt(double t);

    /// <summary>The derivative by the parameter; its direction is the direction of travel.</summary>
    /// <param name="t">0 at the start, 1 at the end.</param>
    public abstract Vec2 DerivativeAt(double t);

    /// <summary>The image of the curve.</summary>
    public abstract Curve Transformed(Affine map);

    /// <summary>A length that the curve does not exceed, mm; infinite when none is known.</summary>
    internal virtual double MaxLength => double.PositiveInfinity;

    /// <summary>Where the curve starts.</summary>
    public Vec2 Start => PointAt(0);

    /// <summary>Where the curve ends.</summary>
    public Vec2 End => PointAt(1);
}

/// <summary>A straight line.</summary>
/// <param name="From">Start.</param>
/// <param name="To">End.</param>
public sealed record LineCurve(Vec2 From, Vec2 To) : Curve
{
    /// <inheritdoc/>
    public override Vec2 PointAt(double t) => t == 1 ? To : From + (To - From) * t;

    /// <inheritdoc/>
    public override Vec2 DerivativeAt(double t) => To - From;

    /// <inheritdoc/>
    public override Curve Transformed(Affine map) => new LineCurve(map.Apply(From), map.Apply(To));
}

/// <summary>A cubic Bézier curve.</summary>
/// <param name="P0">Start.</param>
/// <param name="P1">First handle.</param>
/// <param name="P2">Second handle.</param>
/// <param name="P3">End.</param>
public sealed record BezierCurve(Vec2 P0, Vec2 P1, Vec2 P2, Vec2 P3) : Curve
{
    /// <summary>A quadratic Bézier curve, raised to a cubic.</summary>
    public static BezierCurve Quadratic(Vec2 p0, Vec2 p1, Vec2 p2) =>
        new(p0, p0 + (p1 - p0) * (2.0 / 3), p2 + (p1 - p2) * (2.0 / 3), p2);

    /// <inheritdoc/>
    internal override double MaxLength => P0.DistanceTo(P1) + P1.DistanceTo(P2) + P2.DistanceTo(P3);

    /// <inheritdoc/>
    public override Vec2 PointAt(double t)
    {
        if (t == 1) return P3;
        var s = 1 - t;
        return P0 * (s * s * s) + P1 * (3 * s * s * t) + P2 * (3 * s * t * t) + P3 * (t * t * t);
    }

    /// <inheritdoc/>
    public override Vec2 DerivativeAt(double t)
    {
        var s = 1 - t;
        return (P1 - P0) * (3 * s * s) + (P2 - P1) * (6 * s * t) + (P3 - P2) * (3 * t * t);
    }

    /// <inheritdoc/>
    public override Curve Transformed(Affine map) => new BezierCurve(map.Apply(P0), map.Apply(P1), map.Apply(P2), map.Apply(P3));
}

/// <summary>
/// A part of an ellipse: centre + U·cos φ + V·sin φ, φ from <paramref name="Phi0"/> to <paramref name="Phi1"/>.
/// </summary>
/// <param name="Centre">Centre of the ellipse.</param>
/// <param name="U">From the centre to the point at φ = 0.</param>
/// <param name="V">From the centre to the point at φ = π/2.</param>
/// <param name="Phi0">First parameter, radians.</param>
/// <param name="Phi1">Last parameter, radians; below the first when the arc runs backward.</param>
public sealed record EllipseCurve(Vec2 Centre, Vec2 U, Vec2 V, double Phi0, double Phi1) : Curve
{
    /// <summary>A circular arc.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radius">Radius, mm.</param>
    /// <param name="from">First angle, radians, counter-clockwise from x.</param>
    /// <param name="to">Last angle, radians.</param>
    internal static EllipseCurve Circular(Vec2 centre, double radius, double from, double to) =>
        new(centre, new(radius, 0), new(0, radius), from, to);

    /// <inheritdoc/>
    public override Vec2 PointAt(double t)
    {
        var (sin, cos) = Math.SinCos(Phi0 + (Phi1 - Phi0) * t);
        return Centre + U * cos + V * sin;
    }

    /// <inheritdoc/>
    public override Vec2 DerivativeAt(double t)
    {
        var (sin, cos) = Math.SinCos(Phi0 + (Phi1 - Phi0) * t);
        return (V * cos - U * sin) * (Phi1 - Phi0);
    }

    /// <inheritdoc/>
    public override Curve Transformed(Affine map) =>
        new EllipseCurve(map.Apply(Centre), map.ApplyToDirection(U), map.ApplyToDirection(V), Phi0, Phi1);

    /// <summary>The radius when this is a part of a circle to nine digits; otherwise null.</summary>
    public double? CircleRadius =>
        Math.Abs(U.LengthSquared - V.LengthSquared) <= 1e-9 * U.LengthSquared && Math.Abs(U.Dot(V)) <= 1e-9 * U.LengthSquared
            ? U.Length
            : null;
}
