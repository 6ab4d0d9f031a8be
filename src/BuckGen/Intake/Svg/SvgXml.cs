using System.Xml;
using System.Xml.Linq;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>From text to an XML tree, under limits and without ever opening anything else.</summary>
internal static class SvgXml
{
    // Comments are no nodes here; blanks between elements and texts are.
    private const int NodesPerElement = 4;

    // The libraries look at all levels above an element.
    private const int LevelsPerElement = 20;
    private const int MaxAttributes = 500;
    private const int AttributesPerElement = 20;
    private const int MaxReasonLength = 200;

    /// <summary>The tree with line numbers.</summary>
    public static XDocument Load(string text, string name, SvgReadOptions options, CancellationToken cancellation)
    {
        var settings = new XmlReaderSettings
        {
            // Old drawing programs put harmless entities into the DOCTYPE; they are expanded, but not without end.
            DtdProcessing = DtdProcessing.Parse,
            XmlResolver = null,
            MaxCharactersFromEntities = options.MaxEntityCharacters,
            IgnoreComments = true,
        };
        SvgDoctype.Check(text, name);
        try
        {
            using (var reader = XmlReader.Create(new CancellableReader(text, cancellation), settings)) CheckLimits(reader,
                name, options);
            using (var reader = XmlReader.Create(new CancellableReader(text, cancellation), settings))
            {
                var document = XDocument.Load(reader, LoadOptions.SetLineInfo);
                document.DocumentType?.Remove();
                return document;
            }
        }
        catch (XmlException e) when (e.Message.Contains(nameof(settings.MaxCharactersFromEntities), StringComparison.Ordinal))
        {
            throw new OutlineException(
                $"{name}: the entities of the DOCTYPE grow beyond {options.MaxEntityCharacters} characters; "
                + "save the drawing as plain SVG without entities.", e);
        }
        catch (XmlException e)
        {
            throw new OutlineException(
                $"{name}, line {e.LineNumber}, column {e.LinePosition}: broken XML: {Reason(e)}; "
                + "the file may be cut short: save the drawing again.", e);
        }
    }

    private static void CheckLimits(XmlReader reader, string name, SvgReadOptions options)
    {
        var (elements, nodes, attributes, depths) = (0, 0, 0L, 0L);
        while (reader.Read())
        {
            if (++nodes > NodesPerElement * options.MaxElements)
                throw new OutlineException(
                    $"{name}, line {((IXmlLineInfo)reader).LineNumber}: more than {NodesPerElement * options.MaxElements} "
                    + "pieces of markup and text; leave out what is not the outline.");
            if (reader.NodeType != XmlNodeType.Element) continue;
            var line = ((IXmlLineInfo)reader).LineNumber;
            if (elements++ == 0 && reader.LocalName != "svg")
                throw new OutlineException(
                    $"{name}, line {line}: the root element is <{Excerpt.Shorten(reader.Name)}>, not <svg>; save the "
                    + "drawing as SVG.");
            if (elements > options.MaxElements)
                throw new OutlineException(
                    $"{name}, line {line}: more than {options.MaxElements} elements; leave out what is not the outline.");
            if (reader.Depth > options.MaxDepth)
                throw new OutlineException(
                    $"{name}, line {line}: elements nest deeper than {options.MaxDepth} levels; ungroup the drawing.");
            if ((depths += reader.Depth) > LevelsPerElement * options.MaxElements)
                throw new OutlineException(
                    $"{name}, line {line}: up to here the {elements} elements lie {depths / elements} levels deep on "
                    + $"average, {depths} together; the limit is {LevelsPerElement * options.MaxElements}; ungroup the drawing.");
            if ((attributes += reader.AttributeCount) > AttributesPerElement * options.MaxElements)
                throw new OutlineException(
                    $"{name}, line {line}: more than {AttributesPerElement * options.MaxElements} attributes, those that "
                    + "the DOCTYPE adds included; save the drawing as plain SVG.");
            if (reader.AttributeCount > MaxAttributes)
                throw new OutlineException(
                    $"{name}, line {line}: an element has {reader.AttributeCount} attributes, the limit is "
                    + $"{MaxAttributes}; save the drawing as plain SVG.");
        }
    }

    /// <summary>The library's message without the place, which is already given.</summary>
    private static string Reason(XmlException e)
    {
        var end = e.Message.IndexOf(" Line ", StringComparison.Ordinal);
        return Excerpt.Shorten((end < 0 ? e.Message : e.Message[..end]).TrimEnd('.').ReplaceLineEndings(" "), MaxReasonLength);
    }
}
