using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>A box along the axes.</summary>
/// <param name="Min">The corner of the least coordinates, mm.</param>
/// <param name="Max">The corner of the largest coordinates, mm.</param>
internal readonly record struct BoundingBox(Vec3 Min, Vec3 Max)
{
    /// <summary>Nothing.</summary>
    public static readonly BoundingBox Empty = new(
        new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity),
        new(double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity));

    /// <summary>This box and a point.</summary>
    public BoundingBox With(Vec3 p) => new(ComponentMin(Min, p), ComponentMax(Max, p));

    /// <summary>The box with some room all round.</summary>
    public BoundingBox Grown(double margin) => new(Min - new Vec3(margin, margin, margin), Max + new Vec3(margin, margin, margin));

    /// <summary>Whether a point lies inside.</summary>
    public bool Contains(Vec3 p) => Meets(p, p, p);

    /// <summary>Whether the box of a triangle reaches into this one.</summary>
    public bool Meets(Vec3 a, Vec3 b, Vec3 c)
    {
        var (min, max) = (ComponentMin(a, ComponentMin(b, c)), ComponentMax(a, ComponentMax(b, c)));
        return min.X <= Max.X && max.X >= Min.X && min.Y <= Max.Y && max.Y >= Min.Y && min.Z <= Max.Z && max.Z >= Min.Z;
    }

    private static Vec3 ComponentMin(Vec3 a, Vec3 b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    private static Vec3 ComponentMax(Vec3 a, Vec3 b) => new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));
}
