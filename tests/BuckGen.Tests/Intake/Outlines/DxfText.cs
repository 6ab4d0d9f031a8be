using System.Globalization;
using System.Text;
using BuckGen.Geometry;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>Writes small DXF files for tests, group by group.</summary>
internal static class DxfText
{
    public static byte[] File(params IEnumerable<string> entities) => FileWith("9\n$INSUNITS\n70\n4\n", "", entities);

    public static byte[] FileWith(string header, string sections, params IEnumerable<string> entities) => Encoding.ASCII.GetBytes(
        $"0\nSECTION\n2\nHEADER\n{header}0\nENDSEC\n"
        + $"{sections}0\nSECTION\n2\nENTITIES\n{string.Concat(entities)}0\nENDSEC\n0\nEOF\n");

    public static string Blocks(params IEnumerable<string> blocks) =>
        $"0\nSECTION\n2\nBLOCKS\n{string.Concat(blocks)}0\nENDSEC\n";

    public static string Block(string name, params IEnumerable<string> entities) =>
        $"0\nBLOCK\n8\n0\n2\n{name}\n70\n0\n10\n0\n20\n0\n30\n0\n3\n{name}\n{string.Concat(entities)}0\nENDBLK\n8\n0\n";

    public static string Line(double x1, double y1, double x2, double y2, string layer = "0") =>
        Text($"0\nLINE\n8\n{layer}\n10\n{x1}\n20\n{y1}\n11\n{x2}\n21\n{y2}\n");

    public static string Circle(double x, double y, double radius, string layer = "0") =>
        Text($"0\nCIRCLE\n8\n{layer}\n10\n{x}\n20\n{y}\n40\n{radius}\n");

    public static string Polyline(bool closed, params IEnumerable<Vec2> points) =>
        $"0\nLWPOLYLINE\n8\n0\n70\n{(closed ? 1 : 0)}\n{string.Concat(points.Select(p => Text($"10\n{p.X}\n20\n{p.Y}\n")))}";

    public static string Rectangle(double x, double y, double width, double height) =>
        Polyline(true, new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height));

    public static IEnumerable<string> RectangleLines(double x, double y, double width, double height)
    {
        var (right, top) = (x + width, y + height);
        return [Line(x, y, right, y), Line(right, y, right, top), Line(right, top, x, top), Line(x, top, x, y)];
    }

    /// <summary>A line or an arc as the entity that draws it.</summary>
    public static string Format(Segment s) => s.IsArc
        ? "0\nLWPOLYLINE\n8\n0\n70\n0\n"
            + Text($"10\n{s.Start.X:R}\n20\n{s.Start.Y:R}\n42\n{s.Bulge:R}\n10\n{s.End.X:R}\n20\n{s.End.Y:R}\n")
        : Text($"0\nLINE\n8\n0\n10\n{s.Start.X:R}\n20\n{s.Start.Y:R}\n11\n{s.End.X:R}\n21\n{s.End.Y:R}\n");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
