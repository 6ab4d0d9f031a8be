using System.Buffers.Binary;
using System.Text;
using System.Text.Json;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Models;
using BuckGen.Output.Models.Meshing;
using BuckGen.Output.Pictures.Thickness;
using BuckGen.Output.Reports.Page;
using BuckGen.Tests.Design.Bucks;
using BuckGen.Tests.Output.Pictures;
using Snapshooter.Xunit3;
using Xunit;

namespace BuckGen.Tests.Output.Models;

public class ModelFileTests
{
    private static readonly Region Drawn = Shapes.Counter(60, 40, 20, 10).Moved(-500, 200);
    private static readonly SolidMesh Mesh = BuckModel.Smooth(PlainBuck.Create(Drawn));

    [Fact]
    public void The_STL_holds_every_triangle_from_the_origin_on()
    {
        var bytes = StlFile.Write(Mesh).AsSpan();

        Assert.False(bytes.StartsWith("solid"u8));
        Assert.Equal(84 + 50 * Mesh.Triangles.Length, bytes.Length);
        Assert.Equal(Mesh.Triangles.Length, BinaryPrimitives.ReadInt32LittleEndian(bytes[80..]));
        for (var t = 0; t < Mesh.Triangles.Length; t++)
        {
            var numbers = Singles(bytes.Slice(84 + 50 * t, 48));
            var (a, b, c) = Mesh.Triangles[t];
            foreach (var (corner, at) in ((int, int)[])[(a, 3), (b, 6), (c, 9)])
            {
                // The grid is one of powers of two: single precision holds it exactly.
                Assert.Equal(Mesh.Points[corner].X - Mesh.MinCorner.X, numbers[at]);
                Assert.Equal(Mesh.Points[corner].Y - Mesh.MinCorner.Y, numbers[at + 1]);
                Assert.Equal(Mesh.Points[corner].Z, numbers[at + 2], 1e-5);
            }

            Assert.Equal(1, Math.Sqrt(numbers[..3].Sum(n => n * (double)n)), 1e-6);
            Assert.True(Leans(numbers) > 0, $"the normal of triangle {t} points inward");
        }
    }

    [Fact]
    public void The_GLB_is_laid_out_as_its_specification_says()
    {
        var bytes = GlbFile.Write(Mesh, "buck").AsSpan();
        var jsonLength = BinaryPrimitives.ReadInt32LittleEndian(bytes[12..]);
        var binary = bytes[(20 + jsonLength)..];

        Assert.True(bytes.StartsWith("glTF"u8));
        Assert.Equal((2, bytes.Length),
            (BinaryPrimitives.ReadInt32LittleEndian(bytes[4..]), BinaryPrimitives.ReadInt32LittleEndian(bytes[8..])));
        Assert.Equal("JSON", Encoding.ASCII.GetString(bytes.Slice(16, 4)));
        Assert.Equal("BIN\0", Encoding.ASCII.GetString(binary.Slice(4, 4)));
        Assert.Equal(binary.Length - 8, BinaryPrimitives.ReadInt32LittleEndian(binary));
        Assert.Equal(0, jsonLength % 4);

        using var json = JsonDocument.Parse(bytes.Slice(20, jsonLength).ToArray());
        var material = json.RootElement.GetProperty("materials")[0];
        Assert.Equal("wood", material.GetProperty("name").GetString());
        var colour = Numbers(material.GetProperty("pbrMetallicRoughness").GetProperty("baseColorFactor"));
        Assert.Equal([0.6, 0.4, 0.2, 1], colour, (a, b) => Math.Abs(a - b) < 1e-6);
        var node = json.RootElement.GetProperty("nodes")[0];
        Assert.Equal("buck", node.GetProperty("name").GetString());
        var matrix = Numbers(node.GetProperty("matrix"));
        var position = json.RootElement.GetProperty("accessors")[0];
        var (low, high) = (Turned(matrix, Numbers(position.GetProperty("min"))),
            Turned(matrix, Numbers(position.GetProperty("max"))));
        // Metres: as wide as the buck, 0.036 high from the ground up, y up.
        Assert.Equal((Mesh.MaxCorner.X - Mesh.MinCorner.X) / 1000, high[0] - low[0], 1e-6);
        Assert.Equal(0, low[1], 1e-9);
        Assert.Equal(0.036, high[1], 1e-6);
        Assert.Equal((Mesh.MaxCorner.Y - Mesh.MinCorner.Y) / 1000, low[2] - high[2], 1e-6);
        // A viewer turns it about its own middle.
        Assert.Equal((0.0, 0.0), (Math.Round(low[0] + high[0], 6), Math.Round(low[2] + high[2], 6)));

        var corners = Singles(binary.Slice(8, 12 * Mesh.Points.Length));
        Assert.Equal(Mesh.Points.Select(p => (float)p.Z), corners.Where((_, i) => i % 3 == 2));
        Assert.Equal(Mesh.Triangles[^1].C, BinaryPrimitives.ReadInt32LittleEndian(binary[^4..]));
    }

    [Fact]
    public void The_description_in_a_GLB_stays_as_it_was()
    {
        var box = SolidBuilder.Build([new(0, Shapes.RectangleAt(0, 0, 30, 20)), new(5, Shapes.RectangleAt(2, 2, 26, 16))]);

        Snapshot.Match(Description(GlbFile.Write(box, "box").AsSpan()) + "\n"
            + Description(GlbFile.Write(ThicknessTests.Sheet(p => 0.2 + 0.8 * p.X / 100), "sheet").AsSpan()) + "\n");

        static string Description(ReadOnlySpan<byte> bytes) =>
            Encoding.UTF8.GetString(bytes.Slice(20, BinaryPrimitives.ReadInt32LittleEndian(bytes[12..]))).TrimEnd();
    }

    /// <summary>Each view's bytes follow those of another, and what an accessor counts is what its view holds.</summary>
    [Fact]
    public void The_GLB_of_a_sheet_has_a_colour_for_every_corner_brighter_where_it_is_thicker()
    {
        var part = ThicknessTests.Sheet(p => 0.2 + 0.8 * p.X / 100);
        var bytes = GlbFile.Write(part, "sheet").AsSpan();
        var jsonLength = BinaryPrimitives.ReadInt32LittleEndian(bytes[12..]);
        var binary = bytes[(28 + jsonLength)..];

        using var json = JsonDocument.Parse(bytes.Slice(20, jsonLength).ToArray());
        var (views, accessors) = (json.RootElement.GetProperty("bufferViews"), json.RootElement.GetProperty("accessors"));
        (int From, int Length)[] spans = [.. views.EnumerateArray()
            .Select(v => (v.GetProperty("byteOffset").GetInt32(), v.GetProperty("byteLength").GetInt32()))];
        Assert.Equal([12 * part.Points.Length, 12 * part.Triangles.Length, 12 * part.Points.Length],
            spans.Select(s => s.Length));
        var ordered = spans.OrderBy(s => s.From).ToArray();
        Assert.Equal([.. ordered.Skip(1).Select(s => s.From), binary.Length], ordered.Select(s => s.From + s.Length));
        Assert.Equal([part.Points.Length, 3 * part.Triangles.Length, part.Points.Length],
            accessors.EnumerateArray().Select(a => a.GetProperty("count").GetInt32()));
        Assert.Equal("2.0", json.RootElement.GetProperty("asset").GetProperty("version").GetString());
        var primitive = json.RootElement.GetProperty("meshes")[0].GetProperty("primitives")[0];
        Assert.True(json.RootElement.GetProperty("materials")[primitive.GetProperty("material").GetInt32()]
            .GetProperty("doubleSided").GetBoolean(), "a sheet is seen from both sides");
        var colour = primitive.GetProperty("attributes").GetProperty("COLOR_0").GetInt32();
        var (from, length) = spans[accessors[colour].GetProperty("bufferView").GetInt32()];
        var light = Singles(binary.Slice(from, length)).Chunk(3)
            .Select(c => 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2]).ToArray();
        // Linear light, by the curve of IEC 61966-2-1, from memory.
        var scale = ThicknessScale.ForPart(part);
        Assert.All(part.Points.Zip(light), p => Assert.Equal(Light(scale.ColourOf(p.First.Thickness)), p.Second, 1e-5));
        Assert.All(part.Points.Index(), p => Assert.True(p.Index % 11 == 0 || light[p.Index] > light[p.Index - 1], $"{p}"));
        var end = spans[1].From + spans[1].Length;
        Assert.Equal(part.Triangles[^1].C, BinaryPrimitives.ReadInt32LittleEndian(binary[(end - 4)..]));
    }

    [Fact]
    public void The_page_s_model_of_a_sheet_has_the_colours_of_its_thickness_in_bytes()
    {
        var part = ThicknessTests.Sheet(p => 0.2 + 0.8 * p.X / 100);

        using var json = JsonDocument.Parse(ModelData.All([ModelData.FromPart("sheet", part)]));

        var colours = json.RootElement[0].GetProperty("colours").GetBytesFromBase64().Chunk(4).ToArray();
        var scale = ThicknessScale.ForPart(part);
        Assert.Equal(part.Points.Length, colours.Length);
        Assert.All(part.Points.Zip(colours), p =>
        {
            var (red, green, blue) = scale.ColourOf(p.First.Thickness);
            Assert.Equal([red, green, blue, 1], p.Second.Select(b => b / 255.0), (a, b) => Math.Abs(a - b) < 0.003);
        });
    }

    private static double Light((double Red, double Green, double Blue) colour)
    {
        static double Linear(double p) => p <= 0.04045 ? p / 12.92 : Math.Pow((p + 0.055) / 1.055, 2.4);
        return 0.2126 * Linear(colour.Red) + 0.7152 * Linear(colour.Green) + 0.0722 * Linear(colour.Blue);
    }

    [Fact]
    public void A_file_needs_a_mesh_and_a_name()
    {
        Assert.Throws<ArgumentNullException>("mesh", () => StlFile.Write(null!));
        Assert.Throws<ArgumentNullException>("mesh", () => GlbFile.Write((SolidMesh)null!, "none"));
        Assert.Throws<ArgumentNullException>("name", () => GlbFile.Write(Mesh, null!));
    }

    [Fact]
    public void An_empty_mesh_is_no_GLB() =>
        Assert.Throws<ArgumentException>(() =>
            GlbFile.Write(BuckGen.Output.Models.Meshing.SolidBuilder.Build([new(0, Region.Empty)]), "nothing"));

    /// <summary>
    /// Positive when the normal in front of three corners points to the side from which they run counter-clockwise.
    /// </summary>
    private static double Leans(float[] n)
    {
        var (ux, uy, uz) = ((double)n[6] - n[3], (double)n[7] - n[4], (double)n[8] - n[5]);
        var (vx, vy, vz) = ((double)n[9] - n[3], (double)n[10] - n[4], (double)n[11] - n[5]);
        return n[0] * (uy * vz - uz * vy) + n[1] * (uz * vx - ux * vz) + n[2] * (ux * vy - uy * vx);
    }

    /// <summary>A point under a matrix given by columns.</summary>
    private static double[] Turned(double[] m, double[] p) =>
        [.. Enumerable.Range(0, 3).Select(row => m[row] * p[0] + m[4 + row] * p[1] + m[8 + row] * p[2] + m[12 + row])];

    private static double[] Numbers(JsonElement list) => [.. list.EnumerateArray().Select(n => n.GetDouble())];

    private static float[] Singles(ReadOnlySpan<byte> bytes)
    {
        var numbers = new float[bytes.Length / 4];
        for (var i = 0; i < numbers.Length; i++) numbers[i] = BinaryPrimitives.ReadSingleLittleEndian(bytes[(4 * i)..]);
        return numbers;
    }
}
