using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>An axis-aligned bounding box in space.</summary>
/// <param name="Min">Corner of the smallest coordinates, mm.</param>
/// <param name="Max">Corner of the largest coordinates, mm.</param>
internal readonly record struct BoundingBox(Vec3 Min, Vec3 Max)
{
    /// <summary>The empty box.</summary>
    public static readonly BoundingBox Empty = new(
        new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity),
        new(double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity));

    /// <summary>The smallest box that contains this one and a point.</summary>
    public BoundingBox With(Vec3 p) => new(ComponentMin(Min, p), ComponentMax(Max, p));

    /// <summary>The box with a margin on all sides.</summary>
    public BoundingBox Grown(double margin) =>
        new(Min - new Vec3(margin, margin, margin), Max + new Vec3(margin, margin, margin));

    /// <summary>Whether a point lies inside or on the boundary.</summary>
    public bool Contains(Vec3 p) => Meets(p, p, p);

    /// <summary>Whether the bounding box of a triangle meets this one.</summary>
    public bool Meets(Vec3 a, Vec3 b, Vec3 c)
    {
        var (min, max) = (ComponentMin(a, ComponentMin(b, c)), ComponentMax(a, ComponentMax(b, c)));
        return min.X <= Max.X && max.X >= Min.X && min.Y <= Max.Y && max.Y >= Min.Y && min.Z <= Max.Z && max.Z >= Min.Z;
    }

    private static Vec3 ComponentMin(Vec3 a, Vec3 b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    private static Vec3 ComponentMax(Vec3 a, Vec3 b) => new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));
}
