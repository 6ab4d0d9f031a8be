using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>A file that the libraries can be trusted with.</summary>
/// <param name="Document">The cleaned tree.</param>
/// <param name="Viewport">Size and scale of the page.</param>
/// <param name="Elements">The elements by the number in their mark.</param>
internal sealed record PreparedSvg(XDocument Document, SvgViewport Viewport, ImmutableArray<XElement> Elements)
{
    /// <summary>The attribute that leads from a resolved element back to the file.</summary>
    public const string Mark = "data-mark";
}

/// <summary>Checks a tree and takes out what can't be cut, so that nothing is resolved wrongly or without a word.</summary>
internal static class SvgPreparation
{
    /// <summary>The SVG namespace.</summary>
    public static readonly XNamespace Namespace = "http://www.w3.org/2000/svg";

    /// <summary>Cleans a tree in place.</summary>
    public static PreparedSvg Prepare(XDocument document, string file, SvgReadOptions options, SvgNotes notes,
        CancellationToken cancellation)
    {
        var root = document.Root!;
        AdoptNamespace(root, file, notes);
        var viewport = SvgViewport.Read(root, file, options, notes);
        SvgLeftOut.Remove(root, notes, cancellation);
        SvgStyles.Check(root, file, notes, cancellation);
        var elements = root.DescendantsAndSelf().ToImmutableArray();
        foreach (var element in elements)
        {
            cancellation.ThrowIfCancellationRequested();
            SvgAttributes.Check(element, file);
            SquareCorners(element);
        }

        SvgReferences.Check(root, file, options, notes);
        MakeIdsUnique(elements);
        SetPage(root, viewport);
        for (var i = 0; i < elements.Length; i++)
            elements[i].SetAttributeValue(PreparedSvg.Mark, i.ToString(CultureInfo.InvariantCulture));
        return new(document, viewport, elements);
    }

    private static void AdoptNamespace(XElement root, string file, SvgNotes notes)
    {
        if (root.Name.Namespace == Namespace) return;
        if (root.Name.NamespaceName.Length > 0)
            throw SvgPlace.Error(file, root,
                $"the namespace '{Excerpt.Shorten(root.Name.NamespaceName)}' is not that of SVG; save the drawing as SVG");
        foreach (var element in root.DescendantsAndSelf().Where(e => e.Name.NamespaceName.Length == 0))
            element.Name = Namespace + element.Name.LocalName;
        root.Attribute("xmlns")?.Remove();
        notes.Add("namespace-missing", "The root element names no namespace; the file was read as SVG all the same.");
    }

    /// <summary>
    /// A rectangle with a radius of 0 has square corners (SVG 1.1, 9.2); the libraries take the other radius for both.
    /// </summary>
    private static void SquareCorners(XElement element)
    {
        XAttribute?[] radii = [element.Attribute("rx"), element.Attribute("ry")];
        if (element.Name.LocalName != "rect" || !radii.Any(IsZero)) return;
        foreach (var radius in radii) radius?.Remove();
    }

    private static bool IsZero(XAttribute? length) => length is not null && SvgLength.Parse(length.Value) is { Value: 0 };

    /// <summary>The first of an id counts; the libraries would rename the others one by one.</summary>
    private static void MakeIdsUnique(ImmutableArray<XElement> elements)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var element in elements)
        {
            if (element.Attribute("id") is not { } id || seen.Add(id.Value)) continue;
            element.SetAttributeValue(SvgPlace.RepeatedId, id.Value);
            id.Remove();
        }
    }

    /// <summary>
    /// Gives the root its own viewBox as size: the libraries would round the page to whole pixels, so its scale is
    /// left to <see cref="SvgViewport"/>, and percentages are still theirs.
    /// </summary>
    private static void SetPage(XElement root, SvgViewport viewport)
    {
        string[] box = [.. viewport.ViewBox.Select(SvgGrammar.Text)];
        root.SetAttributeValue("viewBox", string.Join(' ', box));
        root.SetAttributeValue("width", box[2]);
        root.SetAttributeValue("height", box[3]);
        root.SetAttributeValue("preserveAspectRatio", null);
    }
}
