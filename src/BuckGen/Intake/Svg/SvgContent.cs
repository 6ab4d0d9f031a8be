using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>From the bytes of a file to its text: unpacked, decoded, and only if it looks like XML.</summary>
internal static partial class SvgContent
{
    // Drawings shrink to a tenth when they are packed; what shrinks to less than a fiftieth is mostly nothing.
    private const int AnyPacked = 2_000_000, MaxPackingRatio = 50;

    /// <summary>The text of the file.</summary>
    public static string Decode(byte[] content, string name, SvgReadOptions options, SvgNotes notes,
        CancellationToken cancellation)
    {
        if (content.Length > options.MaxBytes) throw TooLarge(name, options);
        if (ContentKind.IsPacked(content)) content = Unpacked(content, name, options, cancellation);
        if (ForeignKind(content) is { } kind)
            throw new OutlineException(
                $"{name}: this is {kind}, not an SVG drawing; give the file its right ending or save the drawing as SVG.");

        var (encoding, skip) = EncodingOf(content, name);
        var text = encoding.GetString(content, skip, content.Length - skip);
        var lost = text.IndexOf('\uFFFD', StringComparison.Ordinal);
        if (lost >= 0)
        {
            var line = text.AsSpan(0, lost).Count('\n') + 1;
            notes.Add("encoding",
                $"Some bytes are not {encoding.WebName} text, the first in line {line}; they were read as unknown characters.");
        }

        return text;
    }

    private static byte[] Unpacked(byte[] packed, string name, SvgReadOptions options, CancellationToken cancellation)
    {
        try
        {
            using var source = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
            using var result = new MemoryStream();
            var buffer = new byte[81920];
            for (int read; (read = source.Read(buffer)) > 0;)
            {
                cancellation.ThrowIfCancellationRequested();
                result.Write(buffer, 0, read);
                if (result.Length > options.MaxBytes) throw TooLarge(name, options);
                if (result.Length > AnyPacked + (long)MaxPackingRatio * packed.Length)
                    throw new OutlineException(FormattableString.Invariant(
                        $"{name}: the packed (gzip) file of {packed.Length} bytes unpacks to more than ")
                        + FormattableString.Invariant(
                            $"{AnyPacked + (long)MaxPackingRatio * packed.Length}, beyond {MaxPackingRatio} times its ")
                            + "size; save the drawing unpacked.");
            }

            return result.ToArray();
        }
        catch (InvalidDataException e)
        {
            throw new OutlineException($"{name}: the packed (gzip) file is damaged; save the drawing again.", e);
        }
    }

    /// <summary>What the file is when it is plainly something else; otherwise null.</summary>
    private static string? ForeignKind(byte[] content)
    {
        var head = Encoding.Latin1.GetString(content, 0, Math.Min(content.Length, 512));
        var start = head.TrimStart('\u00EF', '\u00BB', '\u00BF', ' ', '\t', '\r', '\n');
        return start switch
        {
            "" => "an empty file",
            _ when start.StartsWith("AutoCAD Binary DXF", StringComparison.Ordinal) => "a DXF drawing",
            _ when DxfStart().IsMatch(start) => "a DXF drawing",
            _ when start.StartsWith("AC10", StringComparison.Ordinal) => "a DWG drawing",
            _ when start.StartsWith("\u0089PNG", StringComparison.Ordinal) => "a PNG picture",
            _ when start.StartsWith("\u00FF\u00D8\u00FF", StringComparison.Ordinal) => "a JPEG picture",
            _ when start.StartsWith("%PDF", StringComparison.Ordinal) => "a PDF document",
            _ when start.StartsWith("%!PS", StringComparison.Ordinal) => "a PostScript document",
            _ when start.StartsWith("PK\u0003\u0004", StringComparison.Ordinal) => "a ZIP archive",
            _ => null,
        };
    }

    private static (Encoding Encoding, int Skip) EncodingOf(byte[] content, string name)
    {
        if (content is [0xEF, 0xBB, 0xBF, ..]) return (Encoding.UTF8, 3);
        if (content is [0xFF, 0xFE, ..]) return (Encoding.Unicode, 2);
        if (content is [0xFE, 0xFF, ..]) return (Encoding.BigEndianUnicode, 2);
        var declared = DeclaredEncoding().Match(Encoding.Latin1.GetString(content, 0, Math.Min(content.Length, 256)));
        if (!declared.Success) return (Encoding.UTF8, 0);
        var wanted = declared.Groups[1].Value;
        // A declaration that could be read as single bytes can't be true when it names a wider encoding.
        if (wanted.StartsWith("utf-16", StringComparison.OrdinalIgnoreCase)) return (Encoding.UTF8, 0);
        try
        {
            return (CodePagesEncodingProvider.Instance.GetEncoding(wanted) ?? Encoding.GetEncoding(wanted), 0);
        }
        catch (Exception e) when (e is ArgumentException or NotSupportedException)
        {
            throw new OutlineException($"{name}, line 1: the encoding '{wanted}' is not known; save the drawing as UTF-8.", e);
        }
    }

    private static OutlineException TooLarge(string name, SvgReadOptions options) =>
        new($"{name}: larger than the limit of {options.MaxBytes} bytes; take pictures and unused parts out of the drawing.");

    [GeneratedRegex(@"^(999\s+[^\n]*\n\s*)*0\s*\r?\n\s*SECTION\s")]
    private static partial Regex DxfStart();

    [GeneratedRegex(@"^\s*<\?xml[^>]*\sencoding\s*=\s*[""']([\w.:-]+)[""']")]
    private static partial Regex DeclaredEncoding();
}
