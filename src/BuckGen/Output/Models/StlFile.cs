using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text;
using BuckGen.Geometry;
using BuckGen.Output.Models.Meshing;

namespace BuckGen.Output.Models;

/// <summary>Writes a mesh as binary STL, for printers and modellers.</summary>
public static class StlFile
{
    private const int HeaderLength = 80, TriangleLength = 50;

    /// <summary>The bytes of the file. Numbers are mm, z is up.</summary>
    /// <remarks>
    /// The mesh is moved so that the lower left front corner of its box is the origin. Old readers take no coordinates below 0,
    /// and drawings far from their origin would lose digits, since the file's numbers are of single precision.
    /// </remarks>
    /// <param name="mesh">The mesh.</param>
    public static ImmutableArray<byte> Write(SolidMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        var bytes = new byte[HeaderLength + 4 + TriangleLength * mesh.Triangles.Length];
        // Never "solid" at the start: many readers take that for the textual form.
        Encoding.ASCII.GetBytes("BuckGen model, binary STL, millimetres, z up".PadRight(HeaderLength)).CopyTo(bytes, 0);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(HeaderLength), mesh.Triangles.Length);
        var rest = bytes.AsSpan(HeaderLength + 4);
        foreach (var (a, b, c) in mesh.Triangles)
        {
            var (p, q, r) = (Moved(a), Moved(b), Moved(c));
            Put(rest, Normal(p, q, r));
            Put(rest[12..], p);
            Put(rest[24..], q);
            Put(rest[36..], r);
            rest = rest[TriangleLength..];
        }

        return [.. bytes];

        Vec3 Moved(int number) => mesh.Points[number] - mesh.MinCorner;
    }

    private static Vec3 Normal(Vec3 a, Vec3 b, Vec3 c)
    {
        var normal = (b - a).Cross(c - a);
        var length = normal.Length;
        return new(normal.X / length, normal.Y / length, normal.Z / length);
    }

    private static void Put(Span<byte> to, Vec3 p)
    {
        BinaryPrimitives.WriteSingleLittleEndian(to, (float)p.X);
        BinaryPrimitives.WriteSingleLittleEndian(to[4..], (float)p.Y);
        BinaryPrimitives.WriteSingleLittleEndian(to[8..], (float)p.Z);
    }
}
