using BuckGen.Geometry;
using NetTopologySuite.Geometries;

namespace BuckGen.Output.Models.Meshing;

/// <summary>A point of the grid to which plans are rounded, so that edges meet exactly or not at all.</summary>
/// <param name="X">Steps to the right of the grid's origin.</param>
/// <param name="Y">Steps up from it.</param>
internal readonly record struct GridPoint(int X, int Y) : IComparable<GridPoint>
{
    /// <summary>
    /// Steps a millimetre. A power of two, so that a file with numbers of single precision holds every coordinate up to 4096 mm
    /// exactly: what is closed here is closed there.
    /// </summary>
    public const double PerMillimetre = 4096;

    /// <summary>By x, then by y.</summary>
    public int CompareTo(GridPoint other) => X != other.X ? X.CompareTo(other.X) : Y.CompareTo(other.Y);

    /// <summary>The nearest point of the grid.</summary>
    /// <exception cref="OverflowException">The point lies farther than 500 m from the origin.</exception>
    public static GridPoint Nearest(Vec2 point, Vec2 origin) => checked(new(
        (int)Math.Round((point.X - origin.X) * PerMillimetre), (int)Math.Round((point.Y - origin.Y) * PerMillimetre)));

    /// <summary>The grid point of a coordinate counted in steps.</summary>
    public static GridPoint FromCoordinate(Coordinate c) => new((int)c.X, (int)c.Y);

    /// <summary>The point in the plan, mm.</summary>
    public Vec2 InPlan(Vec2 origin) => origin + new Vec2(X / PerMillimetre, Y / PerMillimetre);

    /// <summary>The point as a coordinate counted in steps.</summary>
    public Coordinate ToCoordinate() => new(X, Y);
}
