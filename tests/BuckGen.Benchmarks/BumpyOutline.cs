using System.Globalization;
using System.Text;
using BuckGen.Geometry;
using BuckGen.Outlines;

namespace BuckGen.Benchmarks;

/// <summary>An outline of many short lines, as a traced drawing gives: a round shape with gentle bumps, about 300 mm across.</summary>
internal static class BumpyOutline
{
    public static Vec2[] Points(int count) => [.. Enumerable.Range(0, count).Select(i =>
    {
        var angle = 2 * Math.PI * i / count;
        return new Vec2(140 + 12 * Math.Sin(9 * angle) + 1.5 * Math.Sin(61 * angle), 0).Turned(angle) + new Vec2(160, 160);
    })];

    public static Region Region(int count) => BuckGen.Geometry.Region.FromLoops([Loop.Polygon(Points(count))]);

    public static Outline Outline(int count) => BuckGen.Outlines.Outline.Of("bumpy", Region(count));

    /// <summary>The outline as the SVG file that a drawing program would save.</summary>
    public static byte[] Svg(int count)
    {
        var text = new StringBuilder("""<svg xmlns="http://www.w3.org/2000/svg" width="320mm" height="320mm" viewBox="0 0 320 320"><path d="M""");
        foreach (var p in Points(count)) text.Append(CultureInfo.InvariantCulture, $"{p.X:F4} {p.Y:F4} ");
        return Encoding.UTF8.GetBytes(text.Append("""Z"/></svg>""").ToString());
    }
}
