using System.Globalization;
using System.Text;

namespace BuckGen.Dxf.Tags;

/// <summary>A sink that stores tags as DXF text: ASCII, CR LF line ends, group codes right-aligned in three columns.</summary>
/// <param name="stream">Where the text goes. It is neither flushed nor closed here.</param>
public sealed class DxfTextSink(Stream stream) : IDxfTagSink
{
    // The longest double in fixed notation has 309 digits before its point.
    private readonly byte[] line = new byte[400];

    /// <inheritdoc/>
    public void Write(int code, string value)
    {
        Span<byte> text = value.Length <= line.Length ? stackalloc byte[value.Length] : new byte[value.Length];
        Encoding.ASCII.GetBytes(TagText.Format(code, value), text);
        WriteLines(code, text);
    }

    /// <inheritdoc/>
    public void Write(int code, int value)
    {
        Span<byte> text = stackalloc byte[16];
        value.TryFormat(text, out var length, provider: CultureInfo.InvariantCulture);
        WriteLines(code, text[..length]);
    }

    /// <inheritdoc/>
    public void Write(int code, double value) => WriteLines(code, line.AsSpan(0, TagText.Format(code, value, line)));

    // Bytes, not a text writer: a text writer may add a mark in front or double the carriage returns.
    private void WriteLines(int code, ReadOnlySpan<byte> value)
    {
        Span<byte> text = stackalloc byte[16];
        code.TryFormat(text, out var length, provider: CultureInfo.InvariantCulture);
        for (var i = length; i < 3; i++) stream.WriteByte((byte)' ');
        stream.Write(text[..length]);
        stream.Write("\r\n"u8);
        stream.Write(value);
        stream.Write("\r\n"u8);
    }
}
