using System.Collections.Frozen;
using System.Xml.Linq;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>Removes from a tree everything that is no outline, and reports what a person may miss.</summary>
internal static class SvgLeftOut
{
    private static readonly FrozenSet<string> Kept = FrozenSet.Create(
        "svg", "g", "a", "switch", "defs", "symbol", "use", "style", "stop",
        "path", "rect", "circle", "ellipse", "line", "polyline", "polygon");

    private static readonly FrozenSet<string> Paints = FrozenSet.Create(
        "linearGradient", "radialGradient", "meshgradient", "pattern", "hatch", "solidColor");

    // Words about the drawing, and parts that do nothing unless something else refers to them.
    private static readonly FrozenSet<string> Silent = FrozenSet.Create(
        "title", "desc", "metadata", "view", "cursor", "font", "font-face", "color-profile",
        "clipPath", "mask", "filter", "marker");

    private static readonly XName XLink = XName.Get("href", "http://www.w3.org/1999/xlink");

    /// <summary>Where an element points to: href or, in older files, xlink:href; null when it points nowhere.</summary>
    public static string? Target(XElement element) =>
        ((string?)element.Attribute("href") ?? (string?)element.Attribute(XLink))?.Trim();

    /// <summary>Cleans the tree in place.</summary>
    public static void Remove(XElement root, SvgNotes notes, CancellationToken cancellation)
    {
        var leaving = new HashSet<XNode>();
        var next = root.FirstNode;
        for (var node = next; node is not null; node = next)
        {
            cancellation.ThrowIfCancellationRequested();
            var leaves = node is not XElement element || Leaves(element, notes);
            next = leaves ? Following(node, root) : ((XElement)node).FirstNode ?? Following(node, root);
            // Text only matters in a style sheet.
            var isSheet = node is XText && node.Parent!.Name.LocalName == "style";
            if (leaves && !isSheet) leaving.Add(node);
        }

        // All of a parent's at once: taking them out one by one would walk along its children each time.
        foreach (var parent in leaving.Select(n => n.Parent!).Distinct().ToList())
            parent.ReplaceNodes(parent.Nodes().Where(n => !leaving.Contains(n)).ToList());
    }

    private static bool Leaves(XElement element, SvgNotes notes)
    {
        if (element.Name.Namespace != SvgPreparation.Namespace) return true;
        var name = element.Name.LocalName;
        var place = SvgPlace.Describe(element);
        if (name != "a" && Target(element) is { } target && IsElsewhere(target))
        {
            notes.Count(SvgFinding.External, $"{place} ({Excerpt.Shorten(target)})");
            return true;
        }

        if ((string?)element.Attribute("systemLanguage") is { } language)
        {
            notes.Count(SvgFinding.Language, $"{place} ({Excerpt.Shorten(language)})");
            return true;
        }

        if (Kept.Contains(name)) return false;
        if (Paints.Contains(name))
        {
            MakePlainPaint(element);
            return false;
        }

        if (!Silent.Contains(name)) notes.Count(SvgFinding.Element(name), place);
        return true;
    }

    /// <summary>Any paint is paint: one plain stop keeps the shape there, whatever the gradient or pattern holds.</summary>
    private static void MakePlainPaint(XElement element)
    {
        var id = element.Attribute("id");
        var stop = new XElement(SvgPreparation.Namespace + "stop", new XAttribute("stop-color", "black"));
        element.Name = SvgPreparation.Namespace + "linearGradient";
        element.ReplaceAll(id is null ? null : new XAttribute(id), stop);
    }

    private static bool IsElsewhere(string target) =>
        !target.StartsWith('#') && !target.StartsWith("data:", StringComparison.OrdinalIgnoreCase);

    private static XNode? Following(XNode node, XElement root)
    {
        for (var at = node; at != root; at = at.Parent!)
            if (at.NextNode is { } next) return next;
        return null;
    }
}
