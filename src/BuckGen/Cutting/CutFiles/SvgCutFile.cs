using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BuckGen.Cutting.CutPaths;
using BuckGen.Geometry;

namespace BuckGen.Cutting.CutFiles;

/// <summary>Writes a cut drawing as SVG at full size: one user unit is one millimetre.</summary>
public static class SvgCutFile
{
    /// <summary>The bytes of the file.</summary>
    public static ImmutableArray<byte> Write(CutDrawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        var page = drawing.Page;
        var (width, height) = (SvgText.Number(page.Width), SvgText.Number(page.Height));
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} "
            + $"{height}\">\n");
        text.Append(CultureInfo.InvariantCulture, $"<title>{SvgText.Escaped(drawing.Title)}</title>\n");
        foreach (var group in drawing.Paths.GroupBy(p => p.Layer).OrderBy(g => g.Key))
        {
            text.Append(CultureInfo.InvariantCulture,
                $"<g id=\"{group.Key.Name()}\" fill=\"none\" stroke=\"{group.Key.StrokeColour()}\" stroke-width=\"0.1\">\n");
            foreach (var path in group) text.Append(Element(path, page)).Append('\n');
            text.Append("</g>\n");
        }

        return [.. Encoding.UTF8.GetBytes(text.Append("</svg>\n").ToString())];
    }

    private static string Element(CutPath path, Bounds page) => path.AsCircle() is { } circle
        ? $"<circle cx=\"{SvgText.X(circle.Centre, page)}\" cy=\"{SvgText.Y(circle.Centre, page)}\" "
            + $"r=\"{SvgText.Number(circle.Radius)}\"/>"
        : $"<path d=\"{SvgText.PathData(path.Segments, path.Closed, page)}\"/>";
}
