using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Output.Models.Meshing;

/// <summary>
/// The surface of solid bodies as triangles: closed, every edge shared by exactly two triangles that run along it in opposite
/// directions. Bodies that touch along an edge or at a point have corners of their own there. Immutable.
/// </summary>
public sealed class SolidMesh
{
    internal SolidMesh(ImmutableArray<Vec3> points, ImmutableArray<MeshTriangle> triangles)
    {
        (Points, Triangles) = (points, triangles);
        if (points.IsEmpty) return;
        MinCorner = new(points.Min(p => p.X), points.Min(p => p.Y), points.Min(p => p.Z));
        MaxCorner = new(points.Max(p => p.X), points.Max(p => p.Y), points.Max(p => p.Z));
        // From a point of the mesh, so that far-away drawings lose no digits.
        Volume = triangles.Sum(t => SixVolumes(points[t.A], points[t.B], points[t.C], MinCorner)) / 6;
    }

    /// <summary>The corners, mm; x and y as in the drawing, z up from the bottom of the stack.</summary>
    public ImmutableArray<Vec3> Points { get; }

    /// <summary>The triangles, counter-clockwise seen from outside.</summary>
    public ImmutableArray<MeshTriangle> Triangles { get; }

    /// <summary>True when there is nothing to show.</summary>
    public bool IsEmpty => Triangles.IsEmpty;

    /// <summary>Enclosed volume, mm³.</summary>
    public double Volume { get; }

    /// <summary>The lower left front corner of the smallest box round the mesh; all zero when there is nothing in it.</summary>
    public Vec3 MinCorner { get; }

    /// <summary>The upper right rear corner of the smallest box round the mesh; all zero when there is nothing in it.</summary>
    public Vec3 MaxCorner { get; }

    /// <summary>Six times the signed volume of the pyramid from a tip to a triangle, mm³.</summary>
    private static double SixVolumes(Vec3 a, Vec3 b, Vec3 c, Vec3 tip) => (a - tip).Dot((b - tip).Cross(c - tip));
}
