using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace BuckGen.Intake.Svg;

/// <summary>Looks through style sheets for what would move shapes or come from elsewhere.</summary>
internal static partial class SvgStyles
{
    private const int MaxBracketDepth = 50;
    private const double MaxMatches = 4_000_000;

    /// <summary>Refuses transforms in styles and endless style sheets; reports imported ones.</summary>
    public static void Check(XElement root, string file, SvgNotes notes, CancellationToken cancellation)
    {
        var (elements, matches) = (0, 0.0);
        var selectors =
            new Lazy<SvgSelectors>(() => new(MaxDepth(root), root.DescendantsAndSelf().Max(e => e.Elements().Count())));
        foreach (var element in root.DescendantsAndSelf())
        {
            cancellation.ThrowIfCancellationRequested();
            elements++;
            var isSheet = element.Name.LocalName == "style";
            var style = isSheet ? element.Value : (string?)element.Attribute("style") ?? "";
            // The libraries read some of these and not others; a shape in the wrong place is worse than no file.
            if (Moves().Match(style) is { Success: true } move)
                throw SvgPlace.Error(file, element,
                    $"the style property '{move.Groups[1].Value}' moves or reshapes what it styles; write it as an attribute");
            if (Depth(style) > MaxBracketDepth)
                throw SvgPlace.Error(file, element,
                    $"the style nests brackets deeper than {MaxBracketDepth}; save the drawing as plain SVG");
            if (isSheet) matches += selectors.Value.CostOf(style);
            if (isSheet && style.Contains("@import", StringComparison.OrdinalIgnoreCase))
                notes.Count(SvgFinding.ExternalStyle, SvgPlace.Describe(element));
            // The libraries drop this one property of a sheet; clip paths, filters and markers they keep.
            if (isSheet && Masks().IsMatch(style)) notes.Count(SvgFinding.Mask, SvgPlace.Describe(element));
        }

        var comparisons = elements * matches;
        if (comparisons > MaxMatches)
        {
            var shown = comparisons < 1e15 ? comparisons.ToString("0", CultureInfo.InvariantCulture) : "over 10^15";
            throw SvgPlace.Error(file, root,
                FormattableString.Invariant($"the style rules take {shown} comparisons for {elements} elements, the limit is ")
                + FormattableString.Invariant($"{MaxMatches:0}; save the drawing as plain SVG without style sheets"));
        }

        if (root.Document!.Nodes().OfType<XProcessingInstruction>().Any(p => p.Target == "xml-stylesheet"))
            notes.Count(SvgFinding.ExternalStyle, "xml-stylesheet");
    }

    private static int MaxDepth(XElement root)
    {
        var (depth, deepest) = (0, 0);
        for (XElement? at = root; at is not null;)
        {
            deepest = Math.Max(deepest, depth);
            if (at.Elements().FirstOrDefault() is { } child) (at, depth) = (child, depth + 1);
            else
            {
                while (at is not null && at != root && at.ElementsAfterSelf().FirstOrDefault() is null)
                    (at, depth) = (at.Parent, depth - 1);
                at = at is null || at == root ? null : at.ElementsAfterSelf().First();
            }
        }

        return deepest;
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
