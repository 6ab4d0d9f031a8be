using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using Svg.Skia;

namespace BuckGen.Intake.Svg;

/// <summary>Leads from nodes of the resolved scene back to the elements of the file.</summary>
/// <param name="elements">The elements by the number in their mark.</param>
internal sealed class SvgSources(ImmutableArray<XElement> elements)
{
    /// <summary>The element in words: "path #hull".</summary>
    public string Describe(SvgSceneNode node) => Element(node) is { } element ? SvgPlace.Describe(element) : node.Kind.ToString();

    /// <summary>Name of the drawing program's layer that starts here; null when none does.</summary>
    public string? LayerOf(SvgSceneNode node)
    {
        var attributes = Element(node)?.Attributes();
        if (attributes?.Any(a => a is { Name.LocalName: "groupmode", Value: "layer" }) != true) return null;
        return attributes.FirstOrDefault(a => a.Name.LocalName == "label" && a.Name.NamespaceName.Length > 0)?.Value;
    }

    /// <summary>True when the element itself or its style attribute refers to something by a property.</summary>
    public bool Has(SvgSceneNode node, string property)
    {
        if (Element(node) is not { } element) return false;
        return ((string?)element.Attribute(property))?.Contains("url(", StringComparison.Ordinal) == true
            || ((string?)element.Attribute("style") ?? "").Split(';').Any(s =>
                s.TrimStart().StartsWith(property, StringComparison.Ordinal) && s.Contains("url(", StringComparison.Ordinal));
    }

    private XElement? Element(SvgSceneNode node) =>
        node.Element?.CustomAttributes.TryGetValue(PreparedSvg.Mark, out var mark) == true
        && int.TryParse(mark, CultureInfo.InvariantCulture, out var number) && number >= 0 && number < elements.Length
            ? elements[number]
            : null;
}
