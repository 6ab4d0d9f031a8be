using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BuckGen.Cutting.CutFiles;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Quantities;

namespace BuckGen.Output.Pictures.Pdf;

/// <summary>Writes pictures as the pages of a PDF, in real millimetres; text stays text.</summary>
internal static class PdfPicture
{
    /// <summary>PDF counts in points: 72 an inch.</summary>
    public const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>Catalog, pages, information and font come first, then two objects a page.</summary>
    private const int FirstPage = 5;

    /// <summary>The bytes of the file.</summary>
    /// <param name="pages">At least one page; the first one's title is the document's.</param>
    public static ImmutableArray<byte> Write(ImmutableArray<Picture> pages)
    {
        if (pages.IsDefaultOrEmpty) throw new ArgumentException("A PDF needs at least one page.", nameof(pages));
        var places =
            string.Join(' ', pages.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"{FirstPage + 2 * i} 0 R")));
        List<string> objects =
        [
            // Asks the print dialogue for real size; those that do not know the wish leave it to the words on the page.
            "<< /Type /Catalog /Pages 2 0 R /Lang (en) /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >> >>",
            string.Create(CultureInfo.InvariantCulture, $"<< /Type /Pages /Kids [{places}] /Count {pages.Length} >>"),
            $"<< /Title "
            + $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(VisibleText.Escape(pages[0].Title)))}> "
            + "/Creator (BuckGen) >>",
            "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
        ];
        foreach (var page in pages)
        {
            var (width, height) = (SvgText.Number(page.Page.Width * PointsPerMillimetre),
                SvgText.Number(page.Page.Height * PointsPerMillimetre));
            objects.Add(string.Create(CultureInfo.InvariantCulture,
                $"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 {width} {height}] /Resources << /Font << /{PdfContent.Font} "
                + $"4 0 R >> >> /Contents {objects.Count + 2} 0 R >>"));
            objects.Add(PdfFile.Stream(PdfContent.Write(page)));
        }

        return PdfFile.Write(objects, root: 1, info: 3);
    }
}
