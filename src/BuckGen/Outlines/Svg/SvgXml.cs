using System.Xml;
using System.Xml.Linq;

namespace BuckGen.Outlines.Svg;

/// <summary>From text to an XML tree, under limits and without ever opening anything else.</summary>
internal static class SvgXml
{
    /// <summary>The tree with line numbers.</summary>
    public static XDocument Load(string text, string name, SvgReadOptions options)
    {
        var settings = new XmlReaderSettings
        {
            // Old drawing programs put harmless entities into the DOCTYPE; they are expanded, but not without end.
            DtdProcessing = DtdProcessing.Parse,
            XmlResolver = null,
            MaxCharactersFromEntities = options.MaxEntityCharacters,
            IgnoreComments = true,
        };
        try
        {
            using (var reader = XmlReader.Create(new StringReader(text), settings)) CheckLimits(reader, name, options);
            using (var reader = XmlReader.Create(new StringReader(text), settings))
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
        var elements = 0;
        while (reader.Read())
        {
            if (reader.NodeType != XmlNodeType.Element) continue;
            var line = ((IXmlLineInfo)reader).LineNumber;
            if (elements++ == 0 && reader.LocalName != "svg")
                throw new OutlineException(
                    $"{name}, line {line}: the root element is <{reader.Name}>, not <svg>; save the drawing as SVG.");
            if (elements > options.MaxElements)
                throw new OutlineException(
                    $"{name}, line {line}: more than {options.MaxElements} elements; leave out what is not the outline.");
            if (reader.Depth > options.MaxDepth)
                throw new OutlineException(
                    $"{name}, line {line}: elements nest deeper than {options.MaxDepth} levels; ungroup the drawing.");
        }
    }

    /// <summary>The library's words without the place, which is told already.</summary>
    private static string Reason(XmlException e)
    {
        var end = e.Message.IndexOf(" Line ", StringComparison.Ordinal);
        return (end < 0 ? e.Message : e.Message[..end]).TrimEnd('.').ReplaceLineEndings(" ");
    }
}
