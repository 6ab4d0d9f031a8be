using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text.Json;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Output.Models.Meshing;
using BuckGen.Output.Pictures.Thickness;

namespace BuckGen.Output.Models;

/// <summary>Writes a mesh or a formed sheet as glTF 2.0 in its binary form, for viewers and web pages.</summary>
public static class GlbFile
{
    private const uint Magic = 0x46546C67, JsonChunk = 0x4E4F534A, BinaryChunk = 0x004E4942;

    // Numbers of the glTF specification.
    private const int Float = 5126, UnsignedInt = 5125, Points = 34962, Indices = 34963;

    /// <summary>The bytes of the file.</summary>
    /// <remarks>
    /// The numbers inside are mm with z up, from the middle of the mesh's foot; the one node turns and scales them to what glTF
    /// requires, metres with y up. One matt material of the colour of wood, no normals: viewers then show every triangle flat, as
    /// it is.
    /// </remarks>
    /// <param name="mesh">The mesh, not empty: glTF has no empty meshes.</param>
    /// <param name="name">Name of the node and its mesh.</param>
    /// <exception cref="ArgumentException">The mesh is empty.</exception>
    public static ImmutableArray<byte> Write(SolidMesh mesh, string name)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(name);
        if (mesh.IsEmpty) throw new ArgumentException("glTF has no empty meshes.", nameof(mesh));
        return Write(name, Centred(mesh), [], [.. mesh.Triangles.SelectMany(t => (uint[])[(uint)t.A, (uint)t.B, (uint)t.C])],
            new("wood", [0.6, 0.4, 0.2, 1], false));
    }

    /// <summary>The bytes of a file with the formed sheet, coloured by its thickness: dark where it is thin.</summary>
    /// <param name="part">The predicted part, at rest.</param>
    /// <param name="name">Name of the node and its mesh.</param>
    /// <exception cref="ArgumentException">The prediction did not converge, so there is no sheet.</exception>
    public static ImmutableArray<byte> Write(FormedPart part, string name)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.Triangles.IsEmpty) throw new ArgumentException("glTF has no empty meshes.", nameof(part));
        ArgumentNullException.ThrowIfNull(name);
        var scale = ThicknessScale.ForPart(part);
        return Write(name, Centred([.. part.Points.Select(p => new Vec3(p.X, p.Y, p.Z))]),
            [.. part.Points.SelectMany(p => Parts(scale.ColourOf(p.Thickness)))],
            [.. part.Triangles.SelectMany(t => (uint[])[(uint)t.A, (uint)t.B, (uint)t.C])], new("sheet", [1, 1, 1, 1], true));

        // glTF wants colours in linear light.
        static IEnumerable<float> Parts((double Red, double Green, double Blue) c) =>
            [Linear(c.Red), Linear(c.Green), Linear(c.Blue)];
    }

    /// <summary>From the curve of sRGB to linear light (IEC 61966-2-1, from memory).</summary>
    private static float Linear(double part) => (float)(part <= 0.04045 ? part / 12.92 : Math.Pow((part + 0.055) / 1.055, 2.4));

    private static ImmutableArray<byte> Write(string name, float[] places, float[] colours, uint[] triangles, Material material)
    {
        var json = JsonSerializer.SerializeToUtf8Bytes(Description(name, places, colours, triangles, material));
        var jsonLength = (json.Length + 3) / 4 * 4;
        var binaryLength = 4 * (places.Length + colours.Length + triangles.Length);
        var bytes = new byte[12 + 8 + jsonLength + 8 + binaryLength];
        var rest = Put(bytes, Magic, 2, (uint)bytes.Length, (uint)jsonLength, JsonChunk);
        json.CopyTo(rest);
        // The length must be a multiple of four; JSON is filled up with blanks.
        rest[json.Length..jsonLength].Fill((byte)' ');
        rest = Put(rest[jsonLength..], (uint)binaryLength, BinaryChunk);
        foreach (var number in places.Concat(colours))
        {
            BinaryPrimitives.WriteSingleLittleEndian(rest, number);
            rest = rest[4..];
        }

        Put(rest, triangles);
        return [.. bytes];
    }

    private static float[] Centred(SolidMesh mesh) => Centred(mesh.Points);

    private static float[] Centred(ImmutableArray<Vec3> points)
    {
        var (middleX, middleY, foot) = ((points.Min(p => p.X) + points.Max(p => p.X)) / 2,
            (points.Min(p => p.Y) + points.Max(p => p.Y)) / 2, points.Min(p => p.Z));
        return [.. points.SelectMany(p => (float[])[(float)(p.X - middleX), (float)(p.Y - middleY), (float)(p.Z - foot)])];
    }

    private static object Description(string name, float[] places, float[] colours, uint[] triangles, Material material)
    {
        var attributes = new Dictionary<string, int> { ["POSITION"] = 0 };
        if (colours.Length > 0) attributes["COLOR_0"] = 2;
        object[] views =
        [
            new { buffer = 0, byteOffset = 0, byteLength = 4 * places.Length, target = Points },
            new { buffer = 0, byteOffset = 4 * (places.Length + colours.Length), byteLength = 4 * triangles.Length,
                target = Indices },
            .. colours.Length == 0 ? Array.Empty<object>()
                : [new { buffer = 0, byteOffset = 4 * places.Length, byteLength = 4 * colours.Length, target = Points }],
        ];
        object[] accessors =
        [
            new { bufferView = 0, componentType = Float, count = places.Length / 3, type = "VEC3",
                min = Extremes(places, Math.Min), max = Extremes(places, Math.Max) },
            new { bufferView = 1, componentType = UnsignedInt, count = triangles.Length, type = "SCALAR" },
            .. colours.Length == 0 ? Array.Empty<object>()
                : [new { bufferView = 2, componentType = Float, count = colours.Length / 3, type = "VEC3" }],
        ];
        return new
        {
            asset = new { version = "2.0", generator = "BuckGen" },
            scene = 0,
            scenes = new[] { new { name, nodes = new[] { 0 } } },
            // By columns: x stays, y becomes -z, z becomes y; a thousandth of each.
            nodes = new[] { new { name, mesh = 0,
                matrix = (double[])[0.001, 0, 0, 0, 0, 0, -0.001, 0, 0, 0.001, 0, 0, 0, 0, 0, 1] } },
            meshes = new[] { new { name, primitives = new[] { new { attributes, indices = 1, material = 0 } } } },
            materials = new[]
            {
                new { name = material.Name, doubleSided = material.DoubleSided,
                    pbrMetallicRoughness = new { baseColorFactor = material.Colour, metallicFactor = 0, roughnessFactor = 0.9 } },
            },
            buffers = new[] { new { byteLength = 4 * (places.Length + colours.Length + triangles.Length) } },
            bufferViews = views,
            accessors,
        };
    }

    private static float[] Extremes(float[] places, Func<float, float, float> better) =>
        [.. Enumerable.Range(0, 3).Select(axis => places.Where((_, i) => i % 3 == axis).Aggregate(better))];

    private sealed record Material(string Name, double[] Colour, bool DoubleSided);

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
