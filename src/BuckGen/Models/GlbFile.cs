using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text.Json;

namespace BuckGen.Models;

/// <summary>Writes a mesh as glTF 2.0 in its binary form, for viewers and web pages.</summary>
public static class GlbFile
{
    private const uint Magic = 0x46546C67, JsonChunk = 0x4E4F534A, BinaryChunk = 0x004E4942;
    private const int PointLength = 12, IndexLength = 4;

    // Numbers of the glTF specification.
    private const int Float = 5126, UnsignedInt = 5125, Points = 34962, Indices = 34963;

    /// <summary>The bytes of the file.</summary>
    /// <remarks>
    /// The numbers inside are mm with z up, from the middle of the mesh's foot; the one node turns and shrinks them to what glTF demands,
    /// metres with y up. One matt material of the colour of wood, no normals: viewers then show every triangle flat, as it is.
    /// </remarks>
    /// <param name="mesh">The mesh, not empty: glTF has no empty meshes.</param>
    /// <param name="name">Name of the node and its mesh.</param>
    /// <exception cref="ArgumentException">The mesh is empty.</exception>
    public static ImmutableArray<byte> Write(SolidMesh mesh, string name)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(name);
        if (mesh.IsEmpty) throw new ArgumentException("glTF has no empty meshes.", nameof(mesh));
        var positions = Centred(mesh).ToArray();
        var json = JsonSerializer.SerializeToUtf8Bytes(Description(mesh, name, positions));
        var jsonLength = (json.Length + 3) / 4 * 4;
        var binaryLength = PointLength * mesh.Points.Length + 3 * IndexLength * mesh.Triangles.Length;
        var bytes = new byte[12 + 8 + jsonLength + 8 + binaryLength];
        var rest = Put(bytes, Magic, 2, (uint)bytes.Length, (uint)jsonLength, JsonChunk);
        json.CopyTo(rest);
        // The length must be a multiple of four; JSON is filled up with blanks.
        rest[json.Length..jsonLength].Fill((byte)' ');
        rest = Put(rest[jsonLength..], (uint)binaryLength, BinaryChunk);
        foreach (var (x, y, z) in positions)
        {
            BinaryPrimitives.WriteSingleLittleEndian(rest, x);
            BinaryPrimitives.WriteSingleLittleEndian(rest[4..], y);
            BinaryPrimitives.WriteSingleLittleEndian(rest[8..], z);
            rest = rest[PointLength..];
        }

        foreach (var (a, b, c) in mesh.Triangles) rest = Put(rest, (uint)a, (uint)b, (uint)c);
        return [.. bytes];
    }

    private static IEnumerable<(float X, float Y, float Z)> Centred(SolidMesh mesh)
    {
        var (middleX, middleY) = ((mesh.Lowest.X + mesh.Highest.X) / 2, (mesh.Lowest.Y + mesh.Highest.Y) / 2);
        return mesh.Points.Select(p => ((float)(p.X - middleX), (float)(p.Y - middleY), (float)(p.Z - mesh.Lowest.Z)));
    }

    private static object Description(SolidMesh mesh, string name, (float X, float Y, float Z)[] positions) => new
    {
        asset = new { version = "2.0", generator = "BuckGen" },
        scene = 0,
        scenes = new[] { new { name, nodes = new[] { 0 } } },
        // By columns: x stays, y becomes -z, z becomes y; a thousandth of each.
        nodes = new[] { new { name, mesh = 0, matrix = (double[])[0.001, 0, 0, 0, 0, 0, -0.001, 0, 0, 0.001, 0, 0, 0, 0, 0, 1] } },
        meshes = new[] { new { name, primitives = new[] { new { attributes = new { POSITION = 0 }, indices = 1, material = 0 } } } },
        materials = new[]
        {
            new { name = "wood", pbrMetallicRoughness = new { baseColorFactor = (double[])[0.6, 0.4, 0.2, 1], metallicFactor = 0, roughnessFactor = 0.9 } },
        },
        buffers = new[] { new { byteLength = PointLength * mesh.Points.Length + 3 * IndexLength * mesh.Triangles.Length } },
        bufferViews = new[]
        {
            new { buffer = 0, byteOffset = 0, byteLength = PointLength * mesh.Points.Length, target = Points },
            new { buffer = 0, byteOffset = PointLength * mesh.Points.Length, byteLength = 3 * IndexLength * mesh.Triangles.Length, target = Indices },
        },
        accessors = new object[]
        {
            new
            {
                bufferView = 0, componentType = Float, count = mesh.Points.Length, type = "VEC3",
                min = (float[])[positions.Min(p => p.X), positions.Min(p => p.Y), positions.Min(p => p.Z)],
                max = (float[])[positions.Max(p => p.X), positions.Max(p => p.Y), positions.Max(p => p.Z)],
            },
            new { bufferView = 1, componentType = UnsignedInt, count = 3 * mesh.Triangles.Length, type = "SCALAR" },
        },
    };

    private static Span<byte> Put(Span<byte> to, params ReadOnlySpan<uint> numbers)
    {
        foreach (var number in numbers)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(to, number);
            to = to[4..];
        }

        return to;
    }
}
