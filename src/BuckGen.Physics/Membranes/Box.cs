using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>A box along the axes.</summary>
/// <param name="Low">The corner of the least coordinates, mm.</param>
/// <param name="High">The corner of the largest coordinates, mm.</param>
internal readonly record struct Box(Vec3 Low, Vec3 High)
{
    /// <summary>Nothing.</summary>
    public static readonly Box Empty = new(
        new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity),
        new(double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity));

    /// <summary>This box and a point.</summary>
    public Box With(Vec3 p) => new(Least(Low, p), Most(High, p));

    /// <summary>The box with some room all round.</summary>
    public Box Wider(double by) => new(Low - new Vec3(by, by, by), High + new Vec3(by, by, by));

    /// <summary>Whether a point lies inside.</summary>
    public bool Holds(Vec3 p) => Touches(p, p, p);

    /// <summary>Whether the box of a triangle reaches into this one.</summary>
    public bool Touches(Vec3 a, Vec3 b, Vec3 c)
    {
        var (low, high) = (Least(a, Least(b, c)), Most(a, Most(b, c)));
        return low.X <= High.X && high.X >= Low.X && low.Y <= High.Y && high.Y >= Low.Y && low.Z <= High.Z && high.Z >= Low.Z;
    }

    private static Vec3 Least(Vec3 a, Vec3 b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    private static Vec3 Most(Vec3 a, Vec3 b) => new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));
}
