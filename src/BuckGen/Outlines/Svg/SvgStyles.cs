using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace BuckGen.Outlines.Svg;

/// <summary>Looks through style sheets for what would move shapes or come from elsewhere.</summary>
internal static partial class SvgStyles
{
    private const int DeepestBrackets = 50;
    private const long MostMatches = 10_000_000;

    /// <summary>Refuses transforms in styles and sheets that never end; tells of imported ones.</summary>
    public static void Check(XElement root, string file, SvgNotes notes)
    {
        var (elements, selectors) = (0L, 0L);
        foreach (var element in root.DescendantsAndSelf())
        {
            elements++;
            var isSheet = element.Name.LocalName == "style";
            var style = isSheet ? element.Value : (string?)element.Attribute("style") ?? "";
            // The libraries read some of these and not others; a shape in the wrong place is worse than no file.
            if (Moves().Match(style) is { Success: true } move)
                throw SvgPlace.Error(file, element,
                    $"the style property '{move.Groups[1].Value}' moves or reshapes what it styles; write it as an attribute");
            if (Depth(style) > DeepestBrackets)
                throw SvgPlace.Error(file, element,
                    $"the style nests brackets deeper than {DeepestBrackets}; save the drawing as plain SVG");
            if (isSheet) selectors += style.Count(c => c is '{' or ',');
            if (isSheet && style.Contains("@import", StringComparison.OrdinalIgnoreCase))
                notes.Count(SvgFinding.ExternalStyle, SvgPlace.Of(element));
            // The libraries drop this one property of a sheet; clip paths, filters and markers they keep.
            if (isSheet && Masks().IsMatch(style)) notes.Count(SvgFinding.Mask, SvgPlace.Of(element));
        }

        if (elements * selectors > MostMatches)
            throw SvgPlace.Error(file, root,
                $"{selectors} style rules for {elements} elements are beyond the limit of {MostMatches} pairs; "
                + "save the drawing as plain SVG");
        if (root.Document!.Nodes().OfType<XProcessingInstruction>().Any(p => p.Target == "xml-stylesheet"))
            notes.Count(SvgFinding.ExternalStyle, "xml-stylesheet");
    }

    private static int Depth(string style)
    {
        var (depth, deepest) = (0, 0);
        foreach (var c in style)
        {
            if (c is '(' or '[' or '{') deepest = Math.Max(deepest, ++depth);
            else if (c is ')' or ']' or '}') depth--;
        }

        return deepest;
    }

    [GeneratedRegex(
        @"(?:^|[;{\s])(transform|transform-origin|translate|rotate|scale|offset-path|d|zoom)\s*:(?!\s*none\b)",
        RegexOptions.IgnoreCase)]
    private static partial Regex Moves();

    [GeneratedRegex(@"[;{\s]mask\s*:[^;}]*url\(", RegexOptions.IgnoreCase)]
    private static partial Regex Masks();
}
