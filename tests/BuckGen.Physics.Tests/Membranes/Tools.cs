using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>Nothing to meet.</summary>
internal sealed class NoTool : ITool
{
    public double SignedDistance(Vec3 point) => 1e9;
}

/// <summary>A round hole with an upright wall and a flat floor.</summary>
internal sealed class Cup(double radius, double depth) : ITool
{
    public double SignedDistance(Vec3 point) => Math.Min(radius - point.Plan.Length, point.Z + depth);
}

/// <summary>A square hole about the origin with upright walls and a flat floor; along a strip it is a channel.</summary>
internal sealed class Cavity(double half, double depth) : ITool
{
    public double SignedDistance(Vec3 point) => Math.Min(half - Math.Max(Math.Abs(point.X), Math.Abs(point.Y)), point.Z + depth);
}

/// <summary>A pit with a straight slope from the rim to the middle line or to the tip.</summary>
/// <param name="radius">Half the width at the top, mm.</param>
/// <param name="slope">Angle of the wall against the level, radians.</param>
/// <param name="round">A cone; otherwise a trough along y.</param>
internal sealed class Pit(double radius, double slope, bool round) : ITool
{
    public double SignedDistance(Vec3 point) =>
        (radius - (round ? point.Plan.Length : Math.Abs(point.X))) * Math.Sin(slope) + point.Z * Math.Cos(slope);
}

/// <summary>An upright block on a base board at z = 0.</summary>
/// <param name="height">Height of the block, mm.</param>
/// <param name="plan">Distance of a place from the block's outline in plan, mm, negative inside.</param>
internal sealed class Block(double height, Func<Vec2, double> plan) : ITool
{
    public double SignedDistance(Vec3 point)
    {
        var (side, above) = (plan(point.Plan), point.Z - height);
        return Math.Min(point.Z, side > 0 && above > 0 ? Math.Sqrt(side * side + above * above) : Math.Max(side, above));
    }

    public static Block Disc(double radius, double height) => new(height, p => p.Length - radius);

    public static Block Strip(double half, double height) => new(height, p => Math.Abs(p.X) - half);

    /// <summary>A rectangle about the origin with rounded corners.</summary>
    public static Block Rectangle(double halfX, double halfY, double height, double corner = 0) => new(height, p =>
    {
        var (dx, dy) = (Math.Abs(p.X) - halfX + corner, Math.Abs(p.Y) - halfY + corner);
        return new Vec2(Math.Max(dx, 0), Math.Max(dy, 0)).Length + Math.Min(Math.Max(dx, dy), 0) - corner;
    });
}
