using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.InteropServices;
using BuckGen.Design.Prediction;
using BuckGen.Output.Models.Meshing;
using BuckGen.Output.Pictures.Thickness;

namespace BuckGen.Output.Reports.Page;

/// <summary>A mesh for the page's viewer: little-endian floats, whole numbers and colours in base 64.</summary>
/// <param name="Name">What it is called on its button.</param>
/// <param name="Data">The mesh.</param>
/// <param name="IsColoured">Whether it has colours of its own.</param>
internal sealed record ModelData(string Name, string Data, bool IsColoured)
{
    /// <summary>A solid, which the viewer shades by height.</summary>
    public static ModelData FromMesh(string name, SolidMesh mesh) => Encode(name,
        mesh.Points.SelectMany(p => (double[])[p.X, p.Y, p.Z]), mesh.Triangles.SelectMany(t => (int[])[t.A, t.B, t.C]), []);

    /// <summary>A formed sheet in the colours of its thickness.</summary>
    public static ModelData FromPart(string name, FormedPart part)
    {
        var scale = ThicknessScale.ForPart(part);
        return Encode(name, part.Points.SelectMany(p => (double[])[p.X, p.Y, p.Z]),
            part.Triangles.SelectMany(t => (int[])[t.A, t.B, t.C]),
            part.Points.SelectMany(p => Parts(scale.ColourOf(p.Thickness))));

        static byte[] Parts((double Red, double Green, double Blue) c) => [Part(c.Red), Part(c.Green), Part(c.Blue), 255];
        static byte Part(double part) => (byte)Math.Round(255 * part);
    }

    /// <summary>Several, in the order of their buttons.</summary>
    public static string All(ImmutableArray<ModelData> models) => $"[{string.Join(",", models.Select(m => m.Data))}]";

    private static ModelData Encode(string name, IEnumerable<double> places, IEnumerable<int> corners, IEnumerable<byte> colours)
    {
        float[] points = [.. places.Select(p => (float)p)];
        uint[] triangles = [.. corners.Select(c => (uint)c)];
        byte[] tints = [.. colours];
        return new(name,
            string.Create(CultureInfo.InvariantCulture,
                $"{{\"points\":\"{Text(points)}\",\"triangles\":\"{Text(triangles)}\",\"colours\":\"{Text(tints)}\"}}"),
                tints.Length > 0);
    }

    private static string Text<T>(T[] numbers) where T : struct => Convert.ToBase64String(MemoryMarshal.AsBytes<T>(numbers));
}
