namespace BuckGen.Intake.Outlines;

/// <summary>Recognises a file by its first bytes.</summary>
internal static class ContentKind
{
    /// <summary>
    /// What the file is when it is neither SVG nor DXF, as the end of a message; null when it may be one of them.
    /// </summary>
    public static string? Foreign(ReadOnlySpan<byte> content)
    {
        if (content.IsEmpty) return "the file is empty (0 bytes); export it again";
        if (content.StartsWith((ReadOnlySpan<byte>)[0x89, (byte)'P', (byte)'N', (byte)'G']))
            return Picture("PNG");
        if (content.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])) return Picture("JPEG");
        if (content.StartsWith("GIF8"u8)) return Picture("GIF");
        if (content.StartsWith("BM"u8)) return Picture("BMP");
        if (content.StartsWith("%PDF"u8)) return "this is a PDF document; export the outline as SVG or DXF";
        if (content.StartsWith("%!PS"u8)) return "this is a PostScript file; export the outline as SVG or DXF";
        if (content.StartsWith("PK\x03\x04"u8)) return "this is a zip archive; unpack it first";
        return null;
    }

    /// <summary>True when only SVG has such markup or packing.</summary>
    public static bool IsSvg(ReadOnlySpan<byte> content)
    {
        if (IsPacked(content)) return true;
        // Byte by byte, so that UTF-16 markup is found as well.
        foreach (var b in content[..Math.Min(content.Length, 64)])
        {
            if (b == (byte)'<') return true;
            if (b is not (0 or 0xEF or 0xBB or 0xBF or 0xFE or 0xFF or (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n'))
                return false;
        }

        return false;
    }

    /// <summary>True when the content is packed with gzip.</summary>
    public static bool IsPacked(ReadOnlySpan<byte> content) => content.StartsWith((ReadOnlySpan<byte>)[0x1F, 0x8B]);

    private static string Picture(string kind) => $"this is a {kind} picture; trace it to lines and export SVG or DXF";
}
