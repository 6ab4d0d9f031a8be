using System.Globalization;
using System.Security;
using System.Text;
using BuckGen.Geometry;
using BuckGen.Quantities;

namespace BuckGen.Cutting.CutFiles;

/// <summary>Numbers, paths and text as SVG writes them; SVG's y points down from the top of the page.</summary>
internal static class SvgText
{
    /// <summary>A length in plain decimals.</summary>
    public static string Number(double value)
    {
        var text = value.ToString("0.####", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    /// <summary>
    /// Text that may come from a file, between tags or in an attribute; what XML can't hold is shown by its code.
    /// </summary>
    public static string Escaped(string text) => SecurityElement.Escape(VisibleText.Escape(text));

    /// <summary>A place's distance from the left edge of the page.</summary>
    public static string X(Vec2 p, Bounds page) => Number(p.X - page.MinX);

    /// <summary>A place's distance from the top edge of the page.</summary>
    public static string Y(Vec2 p, Bounds page) => Number(page.MaxY - p.Y);

    /// <summary>Path data of lines and arcs in a row.</summary>
    public static string PathData(IReadOnlyList<Segment> segments, bool closed, Bounds page)
    {
        var data = new StringBuilder($"M{X(segments[0].Start, page)} {Y(segments[0].Start, page)}");
        foreach (var s in segments)
        {
            // An arc that turns left here turns the other way on a page whose y points down.
            data.Append(s.IsArc
                ? $"A{Number(s.Radius)} {Number(s.Radius)} 0 {(Math.Abs(s.Bulge) > 1 ? 1 : 0)} {(s.Bulge > 0 ? 0 : 1)} "
                    + $"{X(s.End, page)} {Y(s.End, page)}"
                : $"L{X(s.End, page)} {Y(s.End, page)}");
        }

        return data.Append(closed ? "Z" : "").ToString();
    }
}
