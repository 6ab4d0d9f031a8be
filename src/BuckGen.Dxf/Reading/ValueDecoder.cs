using System.Globalization;
using System.Text;
using System.Text.Unicode;
using BuckGen.Dxf.Reading.Groups;
using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Reading;

/// <summary>
/// Turns value bytes into text. The header comes first in a file and names version and code page. So the tags themselves give the
/// encoding before the first name that needs it.
/// </summary>
internal sealed class ValueDecoder(ReadContext context, bool utf8Mark)
{
    private const int WindowsLatin = 1252;
    private string variable = "";
    private bool unicode = utf8Mark;
    private Encoding? codePage;

    public string Decode(ReadOnlySpan<byte> bytes, int line)
    {
        if (Ascii.IsValid(bytes))
            return Encoding.ASCII.GetString(bytes);
        if (!unicode && codePage is not null)
            return codePage.GetString(bytes);
        if (Utf8.IsValid(bytes))
            return Encoding.UTF8.GetString(bytes);
        context.NoteOnce(
            DxfNoteKind.UndecodableText, "the text is not UTF-8 as it should be; it was read as Windows Latin (1252)", line);
        return CodePage(WindowsLatin)!.GetString(bytes);
    }

    public void Watch(DxfTag tag)
    {
        if (tag.Code == 9)
            variable = tag.Value;
        else if (tag.Code == 1 && variable == "$ACADVER")
            unicode |= string.CompareOrdinal(tag.Value, "AC1021") >= 0;
        else if (tag.Code == 3 && variable == "$DWGCODEPAGE")
            codePage = Named(tag);
        else if (tag.Code == 0)
            variable = "";
    }

    private Encoding? Named(DxfTag tag)
    {
        var name = tag.Value.Trim().ToUpperInvariant();
        var number = name switch
        {
            "ASCII" or "US_ASCII" => WindowsLatin,
            "UTF-8" or "UTF8" => 65001,
            "BIG5" => 950,
            "GB2312" => 936,
            "KSC5601" => 949,
            "JOHAB" => 1361,
            "MACINTOSH" or "MAC-ROMAN" => 10000,
            _ when name.StartsWith("ISO8859-", StringComparison.Ordinal) => 28590 + Digits(name["ISO8859-".Length..]),
            _ => Digits(name),
        };
        var encoding = CodePage(number);
        if (encoding is null)
        {
            context.Note(
                DxfNoteKind.UndecodableText, $"the code page \"{tag.Value}\" is not known; names may be wrong", tag.Line + 1);
        }

        return encoding;
    }

    private static Encoding? CodePage(int number) =>
        CodePagesEncodingProvider.Instance.GetEncoding(number) ?? number switch
        {
            28591 => Encoding.Latin1,
            65001 => Encoding.UTF8,
            _ => null,
        };

    // The number at the end of names such as ANSI_1252 and DOS850.
    private static int Digits(string name)
    {
        var start = name.AsSpan().LastIndexOfAnyExceptInRange('0', '9') + 1;
        return ushort.TryParse(name.AsSpan(start), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
    }
}
