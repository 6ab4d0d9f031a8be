using System.Globalization;
using System.Text;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Judging;

/// <summary>
/// A DXF reader for judging alone: polylines and circles of the ENTITIES section, straight from the pairs of lines.
/// </summary>
internal static class DxfText
{
    public static IReadOnlyList<DxfPath> Read(IEnumerable<byte> content)
    {
        var lines = Encoding.ASCII.GetString([.. content]).Split('\n');
        var pairs = Enumerable.Range(0, lines.Length / 2)
            .Select(i => (Code: int.Parse(lines[2 * i], CultureInfo.InvariantCulture), Value: lines[2 * i + 1].Trim())).ToArray();
        var start = Array.FindIndex(pairs, p => p is { Code: 2, Value: "ENTITIES" });
        var paths = new List<DxfPath>();
        for (var i = start + 1; pairs[i] is not { Code: 0, Value: "ENDSEC" };)
        {
            var next = i + 1;
            while (pairs[next].Code != 0 || pairs[next].Value is "VERTEX" or "SEQEND") next++;
            paths.Add(PathOf(pairs[i].Value, pairs[(i + 1)..next]));
            i = next;
        }

        return paths;
    }

    private static DxfPath PathOf(string kind, (int Code, string Value)[] pairs)
    {
        // What belongs to the polyline itself stands before its first vertex.
        var own = kind == "POLYLINE" ? pairs.TakeWhile(p => p.Code != 0).ToArray() : pairs;
        var layer = own.First(p => p.Code == 8).Value;
        return kind switch
        {
            "CIRCLE" => DxfPath.Circle(layer, new(Number(own, 10), Number(own, 20)), Number(own, 40)),
            "POLYLINE" or "LWPOLYLINE" =>
                new(layer, false, ((int)Number(own, 70) & 1) == 1, Corners(kind == "POLYLINE" ? pairs[own.Length..] : pairs)),
            _ => throw new InvalidDataException($"A {kind} in a cut file."),
        };
    }

    private static (Vec2, double)[] Corners((int Code, string Value)[] pairs)
    {
        var corners = new List<(Vec2 Point, double Bulge)>();
        foreach (var (code, value) in pairs)
        {
            if (code == 10) corners.Add((new(Parsed(value), 0), 0));
            else if (code == 20) corners[^1] = (new(corners[^1].Point.X, Parsed(value)), 0);
            else if (code == 42) corners[^1] = (corners[^1].Point, Parsed(value));
        }

        return [.. corners];
    }

    private static double Number((int Code, string Value)[] pairs, int code) =>
        pairs.Where(p => p.Code == code).Select(p => Parsed(p.Value)).FirstOrDefault();

    private static double Parsed(string value) => double.Parse(value, CultureInfo.InvariantCulture);
}
