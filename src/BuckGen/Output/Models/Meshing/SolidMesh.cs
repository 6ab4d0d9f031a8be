using System.Collections.Immutable;

namespace BuckGen.Output.Models.Meshing;

/// <summary>A corner of a mesh, in millimetres; x and y as in the drawing, z up from the bottom of the stack.</summary>
/// <param name="X">To the right, mm.</param>
/// <param name="Y">To the rear, mm.</param>
/// <param name="Z">Up, mm.</param>
public readonly record struct MeshPoint(double X, double Y, double Z);

/// <summary>A triangle of a mesh, by the numbers of its corners; counter-clockwise seen from outside.</summary>
/// <param name="A">First corner.</param>
/// <param name="B">Second corner.</param>
/// <param name="C">Third corner.</param>
public readonly record struct MeshTriangle(int A, int B, int C);

/// <summary>
/// The surface of solid bodies as triangles: closed, every edge shared by exactly two triangles that run along it in opposite
/// directions. Bodies that touch along an edge or at a point have corners of their own there. Immutable.
/// </summary>
public sealed class SolidMesh
{
    internal SolidMesh(ImmutableArray<MeshPoint> points, ImmutableArray<MeshTriangle> triangles)
    {
        (Points, Triangles) = (points, triangles);
        if (points.IsEmpty) return;
        MinCorner = new(points.Min(p => p.X), points.Min(p => p.Y), points.Min(p => p.Z));
        MaxCorner = new(points.Max(p => p.X), points.Max(p => p.Y), points.Max(p => p.Z));
        // From a point of the mesh, so that far-away drawings lose no digits.
        Volume = triangles.Sum(t => SixVolumes(points[t.A], points[t.B], points[t.C], MinCorner)) / 6;
    }

    /// <summary>The corners.</summary>
    public ImmutableArray<MeshPoint> Points { get; }

    /// <summary>The triangles.</summary>
    public ImmutableArray<MeshTriangle> Triangles { get; }

    /// <summary>True when there is nothing to show.</summary>
    public bool IsEmpty => Triangles.IsEmpty;

    /// <summary>Enclosed volume, mm³.</summary>
    public double Volume { get; }

    /// <summary>The lower left front corner of the smallest box round the mesh; all zero when there is nothing in it.</summary>
    public MeshPoint MinCorner { get; }

    /// <summary>The upper right rear corner of the smallest box round the mesh; all zero when there is nothing in it.</summary>
    public MeshPoint MaxCorner { get; }

    /// <summary>Six times the signed volume of the pyramid from a tip to a triangle.</summary>
    private static double SixVolumes(MeshPoint a, MeshPoint b, MeshPoint c, MeshPoint tip)
    {
        var (ax, ay, az) = (a.X - tip.X, a.Y - tip.Y, a.Z - tip.Z);
        var (bx, by, bz) = (b.X - tip.X, b.Y - tip.Y, b.Z - tip.Z);
        var (cx, cy, cz) = (c.X - tip.X, c.Y - tip.Y, c.Z - tip.Z);
        return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    }
}
