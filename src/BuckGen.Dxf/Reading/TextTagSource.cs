using System.Globalization;
using System.Text;
using BuckGen.Dxf.Reading.Groups;
using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Reading;

/// <summary>Reads the tags of a DXF text: a line with a group code, a line with a value, and so on to EOF.</summary>
internal static class TextTagSource
{
    private const int MinCode = -5;
    private const int MaxCode = 1071;
    private const string DamagedAbove =
        "stands where a group code should; a line is missing or damaged above, export the file again";

    public static IEnumerable<DxfTag> Read(byte[] bytes, ValueDecoder decoder, ReadContext context)
    {
        var lines = new LineSplitter(bytes, FileKind.HasUtf8Mark(bytes) ? 3 : 0);
        string? type = null;
        while (!lines.AtEnd)
        {
            var code = lines.Next();
            if (code.Trim(" \t"u8).IsEmpty && Rest(lines))
                break;
            var number = Code(code, lines.Line, type);
            if (lines.AtEnd)
                throw new DxfException($"the file ends before the value of group code {number}; it is cut off", lines.Line,
                    Shown(type));
            var line = lines.Line;
            var tag = new DxfTag(number, Value(decoder, lines.Next(), number, line + 1), line);
            if (tag.Code == 999)
                continue;
            if (tag.Code == 0)
                type = tag.Value;
            decoder.Watch(tag);
            yield return tag;
            if (tag is { Code: 0, Value: "EOF" })
                break;
        }

        NoteEnd(lines, context);
    }

    // Names keep inner blanks; blanks around a value are padding in every program's files.
    private static string Value(ValueDecoder decoder, ReadOnlySpan<byte> line, int code, int number)
    {
        var text = decoder.Decode(line, number);
        return code is 1 or 3 ? text : text.Trim();
    }

    private static int Code(ReadOnlySpan<byte> bytes, int line, string? type)
    {
        var trimmed = bytes.Trim(" \t"u8);
        if (int.TryParse(trimmed, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var code)
            && code is >= MinCode and <= MaxCode)
        {
            return code;
        }

        var shown = Shown(trimmed);
        throw line == 1
            ? new DxfException($"this is not a DXF file: it begins with \"{shown}\" where the group code 0 should stand", 1)
            : new DxfException($"\"{shown}\" {DamagedAbove}", line, Shown(type));
    }

    // True when nothing but blank lines is left: those are harmless at the end of a file.
    private static bool Rest(LineSplitter lines)
    {
        var line = lines.Line;
        while (!lines.AtEnd)
        {
            if (!lines.Next().Trim(" \t"u8).IsEmpty)
                throw new DxfException($"an empty line {DamagedAbove}", line);
        }

        return true;
    }

    private static void NoteEnd(LineSplitter lines, ReadContext context)
    {
        if (lines.Unended)
            context.Note(DxfNoteKind.MissingLastLineEnd, "the last line has no line end", lines.Line);
        if (lines.DoubledReturns)
            context.Note(DxfNoteKind.DoubledCarriageReturns, "lines end with CR CR LF; each was taken as one line end", 1);
        while (!lines.AtEnd)
        {
            if (lines.Next().Trim(" \t\x1a"u8).IsEmpty)
                continue;
            context.Note(DxfNoteKind.TextAfterEnd, "there is text after the EOF marker; it was left out", lines.Line);
            return;
        }
    }

    private static string Shown(ReadOnlySpan<byte> bytes) =>
        Excerpt.Shorten(Encoding.Latin1.GetString(bytes[..Math.Min(bytes.Length, 40)]));

    private static string? Shown(string? type) => type is null ? null : Excerpt.Shorten(type);
}
