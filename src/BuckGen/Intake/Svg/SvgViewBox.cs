using System.Xml.Linq;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>The viewBox of an element and how preserveAspectRatio fits it into a page.</summary>
internal static class SvgViewBox
{
    /// <summary>Left, top, width and height in user units; null when the element has no viewBox.</summary>
    public static double[]? Read(XElement element, string file)
    {
        if ((string?)element.Attribute("viewBox") is not { } text || text.Trim() is "" or "none") return null;
        var numbers = SvgGrammar.Numbers(text, out var fault)
            ?? throw SvgPlace.Error(file, element, $"viewBox: {fault}");
        return numbers is [_, _, > 0, > 0]
            ? numbers
            : throw SvgPlace.Error(file, element,
                $"viewBox '{Excerpt.Shorten(text)}' must hold left, top, width and height, the last two above 0");
    }

    /// <summary>The map from a viewBox, y down, to a page in millimetres, y up.</summary>
    public static Affine Fit(XElement element, double[] box, Vec2 page, string file)
    {
        var (scaleX, scaleY) = (page.X / box[2], page.Y / box[3]);
        var (alignX, alignY) = (0.0, 0.0);
        if (Ratio(element, file) is { } ratio)
        {
            scaleX = scaleY = ratio.Slice ? Math.Max(scaleX, scaleY) : Math.Min(scaleX, scaleY);
            (alignX, alignY) = (ratio.X, ratio.Y);
        }

        var left = alignX * (page.X - box[2] * scaleX) - box[0] * scaleX;
        var top = alignY * (page.Y - box[3] * scaleY) - box[1] * scaleY;
        return new(scaleX, 0, 0, -scaleY, left, page.Y - top);
    }

    /// <summary>Where spare room goes, 0 before to 1 behind, and whether the page is filled; null stretches.</summary>
    public static (double X, double Y, bool Slice)? Ratio(XElement element, string file)
    {
        var text = (string?)element.Attribute("preserveAspectRatio") ?? "";
        var all = text.Split([' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries);
        string[] words = all is ["defer", .. var rest] ? rest : all;
        if (words is []) return (0.5, 0.5, false);
        if (words is ["none"] or ["none", "meet" or "slice"]) return null;
        if (words.Length <= 2 && words[0] is ['x', _, _, _, 'Y', _, _, _]
            && Share(words[0][1..4]) is { } x && Share(words[0][5..]) is { } y
            && words.ElementAtOrDefault(1) is null or "meet" or "slice")
            return (x, y, words is [_, "slice"]);
        throw SvgPlace.Error(file, element,
            $"preserveAspectRatio '{Excerpt.Shorten(text)}' is not known; write xMidYMid or none");
    }

    private static double? Share(string word) => word switch { "Min" => 0, "Mid" => 0.5, "Max" => 1, _ => null };
}
