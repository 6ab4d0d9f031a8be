namespace BuckGen.Geometry;

/// <summary>An upright rectangle that encloses something, in millimetres.</summary>
/// <param name="MinX">Left edge, mm.</param>
/// <param name="MinY">Lower edge, mm.</param>
/// <param name="MaxX">Right edge, mm.</param>
/// <param name="MaxY">Upper edge, mm.</param>
public readonly record struct Bounds(double MinX, double MinY, double MaxX, double MaxY)
{
    /// <summary>Encloses nothing; the start value when bounds are gathered.</summary>
    public static Bounds Nothing { get; } =
        new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    /// <summary>Width, mm.</summary>
    public double Width => MaxX - MinX;

    /// <summary>Height, mm.</summary>
    public double Height => MaxY - MinY;

    /// <summary>Length of the diagonal, mm.</summary>
    public double Diagonal => new Vec2(Width, Height).Length;

    /// <summary>The middle of the rectangle.</summary>
    public Vec2 Centre => new((MinX + MaxX) / 2, (MinY + MaxY) / 2);

    /// <summary>The lower left corner.</summary>
    public Vec2 LowerLeft => new(MinX, MinY);

    /// <summary>The smallest bounds of two points.</summary>
    public static Bounds FromCorners(Vec2 a, Vec2 b) =>
        new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));

    /// <summary>The smallest bounds that also enclose a point.</summary>
    internal Bounds With(Vec2 p) =>
        new(Math.Min(MinX, p.X), Math.Min(MinY, p.Y), Math.Max(MaxX, p.X), Math.Max(MaxY, p.Y));

    /// <summary>The smallest bounds that also enclose other bounds.</summary>
    internal Bounds With(Bounds b) =>
        new(Math.Min(MinX, b.MinX), Math.Min(MinY, b.MinY), Math.Max(MaxX, b.MaxX), Math.Max(MaxY, b.MaxY));

    /// <summary>The bounds moved outward on every side.</summary>
    /// <param name="margin">Distance in mm; negative moves inward.</param>
    internal Bounds Grown(double margin) => new(MinX - margin, MinY - margin, MaxX + margin, MaxY + margin);

    /// <summary>True when the point lies inside or on the edge.</summary>
    internal bool Contains(Vec2 p) => p.X >= MinX && p.X <= MaxX && p.Y >= MinY && p.Y <= MaxY;

    /// <summary>True when the other bounds lie wholly inside, edges included.</summary>
    internal bool Contains(Bounds b) => b.MinX >= MinX && b.MaxX <= MaxX && b.MinY >= MinY && b.MaxY <= MaxY;

    /// <summary>Shortest distance to other bounds, mm; 0 when they meet.</summary>
    internal double DistanceTo(Bounds b) => new Vec2(
        Math.Max(0, Math.Max(b.MinX - MaxX, MinX - b.MaxX)), Math.Max(0, Math.Max(b.MinY - MaxY, MinY - b.MaxY))).Length;

    /// <summary>True when the two share a point.</summary>
    internal bool Intersects(Bounds b) => b.MinX <= MaxX && b.MaxX >= MinX && b.MinY <= MaxY && b.MaxY >= MinY;
}
