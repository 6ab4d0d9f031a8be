using System.Collections.Frozen;
using System.Xml.Linq;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>Checks the attributes that decide where a shape lies, and writes them again in plain form.</summary>
internal static class SvgAttributes
{
    // Only what decides shape, place and paint goes on to the libraries; the rest can only trip them up.
    private static readonly FrozenSet<string> Kept = FrozenSet.Create(
        "id", "class", "style", "type", "href", "transform", "viewBox", "preserveAspectRatio", "d", "points",
        "x", "y", "width", "height", "rx", "ry", "cx", "cy", "r", "x1", "y1", "x2", "y2",
        "fill", "fill-rule", "fill-opacity", "stroke", "stroke-width", "stroke-opacity", "opacity", "color",
        "display", "visibility", "clip-path", "mask", "filter", "marker", "marker-start", "marker-mid", "marker-end",
        "stop-color");

    // The libraries' px, by the standard; a page that counts otherwise is scaled as a whole.
    private const double MillimetresPerPixel = 25.4 / 96;

    /// <summary>Checks one element.</summary>
    public static void Check(XElement element, string file)
    {
        var isRoot = element.Parent is null;
        switch (element.Name.LocalName)
        {
            case "path":
                Rewrite(element, "d", file, SvgGrammar.PlainPath);
                break;
            case "polyline" or "polygon":
                Rewrite(element, "points", file, Points);
                break;
            case "svg" or "symbol" when !isRoot:
                _ = SvgViewBox.Read(element, file);
                _ = SvgViewBox.Ratio(element, file);
                break;
        }

        // The root's own size is read apart.
        if (!isRoot)
            foreach (var (attribute, mayBeNegative) in Lengths(element.Name.LocalName))
                CheckLength(element, attribute, mayBeNegative, file);
        if (isRoot && element.Attribute("transform") is not null)
            throw SvgPlace.Error(file, element, "a transform of the whole page is not read; put it on a group inside");
        if (element.Attribute("transform-origin") is not null)
            throw SvgPlace.Error(file, element, "transform-origin is not read; write the transform about the origin");
        Rewrite(element, "transform", file, Transform);
        element.Attributes()
            .Where(a => a.Name.NamespaceName.Length == 0 && !a.IsNamespaceDeclaration && !Kept.Contains(a.Name.LocalName))
            .Remove();
    }

    private delegate string? Reading(string text, out string fault);

    private static void Rewrite(XElement element, string attribute, string file, Reading reading)
    {
        if (element.Attribute(attribute) is not { } found) return;
        if (found.Value.Trim() == "none") found.Remove();
        else
            found.Value = reading(found.Value, out var fault)
                ?? throw SvgPlace.Error(file, element, $"{fault}; repair or redraw it");
    }

    private static string? Points(string text, out string fault)
    {
        if (SvgGrammar.Numbers(text, out fault) is not { } numbers) return null;
        if (numbers.Length % 2 == 0) return string.Join(' ', numbers.Select(SvgGrammar.Text));
        fault = $"{numbers.Length} numbers in points do not form pairs";
        return null;
    }

    private static string? Transform(string text, out string fault) =>
        SvgTransform.Parse(text, out fault) is { } map ? SvgTransform.Text(map) : null;

    private static void CheckLength(XElement element, string attribute, bool mayBeNegative, string file)
    {
        if (element.Attribute(attribute) is not { } found) return;
        if (found.Value.Trim() is "" or "auto")
        {
            found.Remove();
            return;
        }

        var shown = $"{attribute} '{Excerpt.Shorten(found.Value)}'";
        if (SvgLength.Parse(found.Value) is not { } length || !(length.IsAbsolute || length.Unit == "%"))
            throw SvgPlace.Error(file, element,
                $"{shown} is not a length; write a number, alone or with mm, cm, in, pt, pc, Q, px or %");
        if (length.Value < 0 && !mayBeNegative)
            throw SvgPlace.Error(file, element, $"{shown} must not be below 0; redraw the shape");
        found.Value = length.Unit == "%"
            ? SvgGrammar.Text(length.Value) + "%"
            : SvgGrammar.Text(length.Value * (length.MillimetresPerUnit / MillimetresPerPixel ?? 1));
    }

    private static (string Attribute, bool MayBeNegative)[] Lengths(string element) => element switch
    {
        "rect" => [("x", true), ("y", true), ("width", false), ("height", false), ("rx", false), ("ry", false)],
        "circle" => [("cx", true), ("cy", true), ("r", false)],
        "ellipse" => [("cx", true), ("cy", true), ("rx", false), ("ry", false)],
        "line" => [("x1", true), ("y1", true), ("x2", true), ("y2", true)],
        "use" or "svg" or "symbol" => [("x", true), ("y", true), ("width", false), ("height", false)],
        _ => [],
    };
}
