using System.Globalization;
using System.Text;

namespace BuckGen.Dxf.Tags;

/// <summary>A sink that stores tags as DXF text: ASCII, CR LF line ends, group codes right-aligned in three columns.</summary>
/// <param name="stream">Where the text goes. It is neither flushed nor closed here.</param>
public sealed class DxfTextSink(Stream stream) : IDxfTagSink
{
    /// <inheritdoc/>
    public void Write(int code, string value)
    {
        Span<byte> text = value.Length <= TagText.MaxNumber ? stackalloc byte[value.Length] : new byte[value.Length];
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
    public void Write(int code, double value)
    {
        Span<byte> text = stackalloc byte[TagText.MaxNumber];
        WriteLines(code, text[..TagText.Format(code, value, text)]);
    }

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
