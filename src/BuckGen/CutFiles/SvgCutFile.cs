using System.Collections.Immutable;
using System.Globalization;
using System.Security;
using System.Text;
using BuckGen.CutPaths;
using BuckGen.Geometry;

namespace BuckGen.CutFiles;

/// <summary>Writes a cut drawing as SVG in real size: one user unit is one millimetre.</summary>
public static class SvgCutFile
{
    /// <summary>The bytes of the file.</summary>
    public static ImmutableArray<byte> Write(CutDrawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        var page = drawing.Page;
        var (width, height) = (Number(page.Width), Number(page.Height));
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\">\n");
        text.Append(CultureInfo.InvariantCulture, $"<title>{SecurityElement.Escape(drawing.Title)}</title>\n");
        foreach (var group in drawing.Paths.GroupBy(p => p.Layer).OrderBy(g => g.Key))
        {
            text.Append(CultureInfo.InvariantCulture,
                $"<g id=\"{group.Key.Name()}\" fill=\"none\" stroke=\"{group.Key.StrokeColour()}\" stroke-width=\"0.1\">\n");
            foreach (var path in group) text.Append(Element(path, page)).Append('\n');
            text.Append("</g>\n");
        }

        return [.. Encoding.UTF8.GetBytes(text.Append("</svg>\n").ToString())];
    }

    private static string Element(CutPath path, Bounds page)
    {
        if (path.AsCircle() is { } circle)
            return $"<circle cx=\"{X(circle.Centre, page)}\" cy=\"{Y(circle.Centre, page)}\" r=\"{Number(circle.Radius)}\"/>";
        var data = new StringBuilder($"M{X(path.Segments[0].Start, page)} {Y(path.Segments[0].Start, page)}");
        foreach (var s in path.Segments)
        {
            // SVG's y points down, so an arc that turns left here turns the other way there.
            data.Append(s.IsArc
                ? $"A{Number(s.Radius)} {Number(s.Radius)} 0 {(Math.Abs(s.Bulge) > 1 ? 1 : 0)} {(s.Bulge > 0 ? 0 : 1)} {X(s.End, page)} {Y(s.End, page)}"
                : $"L{X(s.End, page)} {Y(s.End, page)}");
        }

        return $"<path d=\"{data}{(path.Closed ? "Z" : "")}\"/>";
    }

    private static string X(Vec2 p, Bounds page) => Number(p.X - page.MinX);

    private static string Y(Vec2 p, Bounds page) => Number(page.MaxY - p.Y);

    private static string Number(double value)
    {
        var text = value.ToString("0.####", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }
}
