using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace BuckGen.Output.Pictures.Pdf;

/// <summary>
/// Puts objects into a file as ISO 32000-1 section 7.5 lays it out (from memory): header, bodies, table of places, trailer. There
/// is no date and no file identifier, both of which may be left out. Nothing is compressed: compressors differ between machines,
/// and the same job must give the same bytes.
/// </summary>
internal static class PdfFile
{
    /// <summary>The file.</summary>
    /// <param name="objects">The bodies of objects 1, 2, 3 and on, in plain ASCII.</param>
    /// <param name="root">Number of the catalog.</param>
    /// <param name="info">Number of the document's information.</param>
    public static ImmutableArray<byte> Write(IReadOnlyList<string> objects, int root, int info)
    {
        var text = new StringBuilder("%PDF-1.6\n");
        var places = new List<int>();
        foreach (var body in objects)
        {
            places.Add(text.Length);
            text.Append(CultureInfo.InvariantCulture, $"{places.Count} 0 obj\n{body}\nendobj\n");
        }

        var table = text.Length;
        text.Append(CultureInfo.InvariantCulture, $"xref\n0 {places.Count + 1}\n0000000000 65535 f \n");
        foreach (var place in places) text.Append(CultureInfo.InvariantCulture, $"{place:0000000000} 00000 n \n");
        text.Append(CultureInfo.InvariantCulture,
            $"trailer\n<< /Size {places.Count + 1} /Root {root} 0 R /Info {info} 0 R >>\nstartxref\n{table}\n%%EOF\n");
        return [.. Encoding.ASCII.GetBytes(text.ToString())];
    }

    /// <summary>A stream's dictionary and content.</summary>
    public static string Stream(string content) =>
        string.Create(CultureInfo.InvariantCulture, $"<< /Length {content.Length} >>\nstream\n{content}\nendstream");
}
