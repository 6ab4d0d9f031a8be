using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BuckGen.Cutting.CutFiles;
using BuckGen.Geometry;
using BuckGen.Output.Pictures.Drawing;

namespace BuckGen.Output.Pictures.Svg;

/// <summary>Writes a picture as SVG: one user unit is one millimetre on paper.</summary>
public static class SvgPicture
{
    /// <summary>Stands near the start of every picture, so that a run may overwrite it but never a user's drawing.</summary>
    private const string Mark = "<desc>Picture made by BuckGen</desc>";
    private const int MarkWithin = 2000;

    /// <summary>True when a file is a picture that was written here.</summary>
    public static bool IsOurs(ReadOnlySpan<byte> content) =>
        content[..Math.Min(content.Length, MarkWithin)].IndexOf(Encoding.UTF8.GetBytes(Mark)) >= 0;

    /// <summary>The bytes of the file.</summary>
    public static ImmutableArray<byte> Write(Picture picture)
    {
        ArgumentNullException.ThrowIfNull(picture);
        var page = picture.Page;
        var (width, height) = (SvgText.Number(page.Width), SvgText.Number(page.Height));
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" ");
        text.Append(CultureInfo.InvariantCulture, $"viewBox=\"0 0 {width} {height}\" font-family=\"sans-serif\" role=\"img\">\n");
        text.Append(CultureInfo.InvariantCulture,
            $"<title>{SvgText.Escaped(picture.Title)}</title>{Mark}\n");
        text.Append(CultureInfo.InvariantCulture, $"<rect width=\"{width}\" height=\"{height}\" fill=\"#ffffff\"/>\n");
        foreach (var item in picture.Items) text.Append(Element(item, page)).Append('\n');
        return [.. Encoding.UTF8.GetBytes(text.Append("</svg>\n").ToString())];
    }

    /// <summary>The picture as a part of a web page.</summary>
    internal static string Inline(Picture picture)
    {
        var page = picture.Page;
        var (width, height) = (SvgText.Number(page.Width), SvgText.Number(page.Height));
        // A picture with links in it is no single image to those who hear the page.
        var role = picture.Items.Any(i => i is PictureLink) ? "group" : "img";
        return $"<svg width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" font-family=\"sans-serif\" "
            + $"role=\"{role}\" aria-label=\"{SvgText.Escaped(picture.Title)}\">"
            + string.Join('\n', picture.Items.Select(i => Element(Shown(i), page))) + "</svg>";
    }

    /// <summary>An item with no more corners than can be seen.</summary>
    private static PictureItem Shown(PictureItem item) => item switch
    {
        PictureShape shape => shape with { Paths = [.. shape.Paths.Select(PaperCurve.Shown)] },
        PictureWindow window => window with { Items = [.. window.Items.Select(Shown)] },
        PictureLink link => link with { Items = [.. link.Items.Select(Shown)] },
        _ => item,
    };

    private static string Element(PictureItem item, Bounds page) => item switch
    {
        PictureShape shape =>
            $"<path d=\"{string.Concat(shape.Paths.Select(p => SvgText.PathData(p.Segments, p.Closed, page)))}\" "
            + $"{Style(shape.Ink)}/>",
        PictureText text => Element(text, page),
        PictureWindow window => Element(window, page),
        PictureLink link =>
            $"<a id=\"{SvgText.Escaped(link.Id)}\" class=\"place\" href=\"#{SvgText.Escaped(link.Target)}\">"
            + $"<title>{SvgText.Escaped(link.Words)}</title>{string.Concat(link.Items.Select(i => Element(i, page)))}</a>",
        _ => throw new ArgumentOutOfRangeException(nameof(item), item, "No such item."),
    };

    private static string Element(PictureText text, Bounds page)
    {
        var (x, y) = (SvgText.X(text.Place, page), SvgText.Y(text.Place, page));
        var turn = text.Turn == 0 ? "" : $" transform=\"rotate({SvgText.Number(-text.Turn)} {x} {y})\"";
        var anchor =
            text.Align switch { TextAlign.Middle => " text-anchor=\"middle\"", TextAlign.End => " text-anchor=\"end\"", _ => "" };
        return $"<text x=\"{x}\" y=\"{y}\" font-size=\"{SvgText.Number(text.Height)}\" fill=\"{text.Colour}\"{anchor}{turn}>"
            + $"{SvgText.Escaped(text.Text)}</text>";
    }

    /// <summary>A drawing within the drawing, which cuts off what lies outside it.</summary>
    private static string Element(PictureWindow window, Bounds page)
    {
        var (view, corner) = (window.View, new Vec2(window.View.MinX, window.View.MaxY));
        var (x, y, width, height) = (SvgText.X(corner, page), SvgText.Y(corner, page), SvgText.Number(view.Width),
            SvgText.Number(view.Height));
        return $"<svg x=\"{x}\" y=\"{y}\" width=\"{width}\" height=\"{height}\" viewBox=\"{x} {y} {width} {height}\">"
            + $"{string.Concat(window.Items.Select(i => Element(i, page)))}</svg>";
    }

    private static string Style(Ink ink)
    {
        var fill = $"fill=\"{ink.Fill ?? "none"}\"{(ink.Fill is null ? "" : " fill-rule=\"evenodd\"")}";
        if (ink.Stroke is null) return fill;
        var dashes = ink.Dashes.IsEmpty ? "" : $" stroke-dasharray=\"{string.Join(' ', ink.Dashes.Select(SvgText.Number))}\"";
        return $"{fill} stroke=\"{ink.Stroke}\" stroke-width=\"{SvgText.Number(ink.Width)}\" stroke-linejoin=\"round\"{dashes}";
    }
}
