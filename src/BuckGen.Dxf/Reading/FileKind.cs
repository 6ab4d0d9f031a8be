using System.Text;

namespace BuckGen.Dxf.Reading;

/// <summary>Decides by content, not by name, whether the bytes can be DXF, and says what they are when not.</summary>
internal static class FileKind
{
    private static ReadOnlySpan<byte> Utf8Mark => [0xEF, 0xBB, 0xBF];

    public static bool HasUtf8Mark(ReadOnlySpan<byte> bytes) => bytes.StartsWith(Utf8Mark);

    public static bool IsBinaryDxf(ReadOnlySpan<byte> bytes) => bytes.StartsWith(BinaryTagSource.Sentinel);

    /// <summary>Throws for everything that is plainly not a DXF text.</summary>
    public static void RefuseForeign(ReadOnlySpan<byte> bytes)
    {
        if (bytes.IsEmpty)
            throw new DxfException("the file is empty (0 bytes); export it again");
        if (Foreign(bytes) is { } what)
            throw new DxfException(what);
        var nul = bytes.IndexOf((byte)0);
        if (nul >= 0)
            throw new DxfException("the file holds a NUL byte; it is damaged, export it again", LineAt(bytes, nul));
    }

    private static string? Foreign(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G']))
            return "this is a PNG picture, not a DXF drawing; trace it and export DXF";
        if (bytes.Length >= 6 && bytes.StartsWith("AC"u8) && bytes[2..6].IndexOfAnyExceptInRange((byte)'0', (byte)'9') < 0)
            return $"this is a DWG drawing ({Encoding.ASCII.GetString(bytes[..6])}), not DXF; save it as DXF";
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]))
            return "this file is compressed (gzip); unpack it first";
        if (bytes.StartsWith("PK\x03\x04"u8))
            return "this file is an archive (zip); unpack it first";
        if (bytes.StartsWith("%PDF"u8))
            return "this is a PDF document, not a DXF drawing; export DXF";
        if (bytes.StartsWith("AutoCAD Binary DXF"u8))
            return "this is a binary DXF whose first bytes are damaged; export it again";
        if (IsUtf16(bytes))
            return "the text is encoded as UTF-16; save it as plain ASCII or UTF-8 text";
        return Markup(bytes);
    }

    // By its mark, or by every other byte of the first lines being zero.
    private static bool IsUtf16(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length >= 2 && (bytes[0], bytes[1]) is (0xFF, 0xFE) or (0xFE, 0xFF))
            return true;
        var head = bytes[..Math.Min(bytes.Length, 64)];
        return head.Length >= 8 && head.Count((byte)0) * 5 >= head.Length * 2;
    }

    private static string? Markup(ReadOnlySpan<byte> bytes)
    {
        var head = HasUtf8Mark(bytes) ? bytes[3..] : bytes;
        head = head.TrimStart(" \t\r\n"u8);
        if (!head.StartsWith("<"u8))
            return null;
        return head[..Math.Min(head.Length, 4096)].IndexOf("<svg"u8) >= 0
            ? "this is an SVG drawing, not DXF"
            : "this is XML or HTML text, not a DXF drawing";
    }

    private static int LineAt(ReadOnlySpan<byte> bytes, int index) => bytes[..index].Count((byte)'\n') + 1;
}
