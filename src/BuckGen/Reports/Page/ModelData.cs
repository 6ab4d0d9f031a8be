using System.Globalization;
using System.Runtime.InteropServices;
using BuckGen.Models;

namespace BuckGen.Reports.Page;

/// <summary>A mesh for the page's viewer: little-endian floats and whole numbers in base 64.</summary>
internal static class ModelData
{
    public static string Of(SolidMesh mesh)
    {
        float[] points = [.. mesh.Points.SelectMany(p => (float[])[(float)p.X, (float)p.Y, (float)p.Z])];
        uint[] triangles = [.. mesh.Triangles.SelectMany(t => (uint[])[(uint)t.A, (uint)t.B, (uint)t.C])];
        return string.Create(CultureInfo.InvariantCulture, $"{{\"points\":\"{Text(points)}\",\"triangles\":\"{Text(triangles)}\"}}");
    }

    private static string Text<T>(T[] numbers) where T : struct => Convert.ToBase64String(MemoryMarshal.AsBytes<T>(numbers));
}
