using System.Globalization;
using System.Text;

namespace BuckGen.Dxf.Tags;

/// <summary>A sink that stores tags as DXF text: ASCII, CR LF line ends, group codes right-aligned in three columns.</summary>
/// <param name="stream">Where the text goes. It is neither flushed nor closed here.</param>
public sealed class DxfTextSink(Stream stream) : IDxfTagSink
{
    /// <inheritdoc/>
    public void Write(int code, string value) => WriteLines(code, TagText.Format(code, value));

    /// <inheritdoc/>
    public void Write(int code, int value) => WriteLines(code, TagText.Format(value));

    /// <inheritdoc/>
    public void Write(int code, double value) => WriteLines(code, TagText.Format(code, value));

    // Bytes, not a text writer: a text writer may add a mark in front or double the carriage returns.
    private void WriteLines(int code, string value) =>
        stream.Write(Encoding.ASCII.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{code,3}\r\n{value}\r\n")));
}
