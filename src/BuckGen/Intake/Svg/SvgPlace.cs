using System.Xml;
using System.Xml.Linq;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>Names an element of the file for a person.</summary>
internal static class SvgPlace
{
    /// <summary>Where an id is kept that an earlier element has already.</summary>
    public const string RepeatedId = "data-id";

    /// <summary>The element by its id, or else by its line: "path #hull", "path at line 12".</summary>
    public static string Describe(XElement element) =>
        ((string?)element.Attribute("id") ?? (string?)element.Attribute(RepeatedId)) is { Length: > 0 } id
            ? $"{element.Name.LocalName} #{Excerpt.Shorten(id)}"
            : $"{element.Name.LocalName} at line {Line(element)}";

    /// <summary>An error at an element.</summary>
    /// <param name="file">Name of the file.</param>
    /// <param name="element">Where it is wrong.</param>
    /// <param name="trouble">What is wrong and what to do.</param>
    public static OutlineException Error(string file, XElement element, string trouble) =>
        new($"{file}, line {Line(element)}, {Describe(element)}: {trouble}.");

    private static int Line(XElement element) => ((IXmlLineInfo)element).LineNumber;
}
