using System.Globalization;
using System.Text;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>A sketch as an SVG in mm, each loop a path of lines and arcs; y runs down there.</summary>
internal static class SketchSvg
{
    public static byte[] Write(IEnumerable<SketchLoop> loops)
    {
        var text = new StringBuilder(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000mm\" height=\"1000mm\" viewBox=\"0 0 1000 1000\"><path "
            + "fill-rule=\"evenodd\" d=\"");
        foreach (var loop in loops) Append(text, loop);
        return Encoding.ASCII.GetBytes(text.Append("\"/></svg>").ToString());
    }

    private static void Append(StringBuilder text, SketchLoop loop)
    {
        var corners = loop.Corners;
        text.Append(CultureInfo.InvariantCulture, $"M{corners[0].Point.X:R} {-corners[0].Point.Y:R}");
        for (var i = 0; i < corners.Count; i++)
        {
            var ((start, bulge), end) = (corners[i], corners[(i + 1) % corners.Count].Point);
            if (bulge == 0)
            {
                if (i + 1 < corners.Count) text.Append(CultureInfo.InvariantCulture, $"L{end.X:R} {-end.Y:R}");
                continue;
            }

            var radius = (end - start).Length * (1 + bulge * bulge) / (4 * Math.Abs(bulge));
            text.Append(CultureInfo.InvariantCulture,
                $"A{radius:R} {radius:R} 0 {(Math.Abs(bulge) > 1 ? 1 : 0)} {(bulge > 0 ? 0 : 1)} {end.X:R} {-end.Y:R}");
        }

        text.Append('Z');
    }
}
