using System.Globalization;
using System.Text;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Benchmarks;

/// <summary>
/// An outline of many short lines, as a traced drawing gives: a round shape with gentle bumps, about 300 mm across.
/// </summary>
internal static class BumpyOutline
{
    public static Vec2[] Points(int count) => [.. Enumerable.Range(0, count).Select(i =>
    {
        var angle = 2 * Math.PI * i / count;
        return new Vec2(140 + 12 * Math.Sin(9 * angle) + 1.5 * Math.Sin(61 * angle), 0).Turned(angle) + new Vec2(160, 160);
    })];

    public static Region Region(int count) => BuckGen.Geometry.Region.FromLoops([Loop.Polygon(Points(count))]);

    public static Outline Outline(int count) => BuckGen.Intake.Outlines.Outline.FromRegion("bumpy", Region(count));

    /// <summary>The outline as the SVG file that a drawing program would save.</summary>
    public static byte[] Svg(int count)
    {
        var text = new StringBuilder(
            """<svg xmlns="http://www.w3.org/2000/svg" width="320mm" height="320mm" viewBox="0 0 320 320"><path d="M""");
        foreach (var p in Points(count)) text.Append(CultureInfo.InvariantCulture, $"{p.X:F4} {p.Y:F4} ");
        return Encoding.UTF8.GetBytes(text.Append("""Z"/></svg>""").ToString());
    }

    /// <summary>The outline as loose lines in any order, as a drawing that was exploded holds them.</summary>
    public static byte[] ExplodedDxf(int count)
    {
        var lines = Lines(count).Select(l => string.Create(CultureInfo.InvariantCulture,
            $"0\nLINE\n8\n0\n10\n{l.From.X:F4}\n20\n{l.From.Y:F4}\n11\n{l.To.X:F4}\n21\n{l.To.Y:F4}\n"));
        return Dxf(lines);
    }

    /// <summary>The same lines for the peer.</summary>
    public static (Vec2 From, Vec2 To)[] Lines(int count)
    {
        var points = Points(count);
        var lines = points.Select((p, i) => (p, points[(i + 1) % count])).ToArray();
        new Random(1).Shuffle(lines);
        return lines;
    }

    /// <summary>Many small discs side by side.</summary>
    public static byte[] Discs(int count) =>
        Dxf(Enumerable.Range(0, count).Select(i => string.Create(CultureInfo.InvariantCulture,
        $"0\nCIRCLE\n8\n0\n10\n{i % 100 * 3}\n20\n{i / 100 * 3}\n40\n1\n")));

    private static byte[] Dxf(IEnumerable<string> entities) => Encoding.ASCII.GetBytes(
        $"0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n"
            + $"0\nSECTION\n2\nENTITIES\n{string.Concat(entities)}0\nENDSEC\n0\nEOF\n");
}
