using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace BuckGen.Dxf.Tests.Support;

/// <summary>Turns the "code value" words of <see cref="Sample"/> into binary DXF.</summary>
internal static class BinarySample
{
    /// <summary>Encodes tags with codes up to 79 or text codes.</summary>
    /// <param name="tags">Words as <see cref="Sample.Text"/> takes them.</param>
    /// <param name="wideCodes">True for the two-byte codes of R13 and later, false for the one-byte codes of R12.</param>
    public static byte[] FromTags(string tags, bool wideCodes)
    {
        using var bytes = new MemoryStream();
        bytes.Write("AutoCAD Binary DXF\r\n\u001a\0"u8);
        foreach (var tag in tags.Split('|'))
        {
            var blank = tag.IndexOf(' ', StringComparison.Ordinal);
            var code = short.Parse(tag.AsSpan(0, blank), CultureInfo.InvariantCulture);
            WriteCode(bytes, code, wideCodes);
            WriteValue(bytes, code, tag[(blank + 1)..]);
        }

        return bytes.ToArray();
    }

    private static void WriteCode(MemoryStream bytes, short code, bool wideCodes)
    {
        if (!wideCodes && code < 255)
        {
            bytes.WriteByte((byte)code);
            return;
        }

        if (!wideCodes)
            bytes.WriteByte(255);
        WriteShort(bytes, code);
    }

    private static void WriteValue(MemoryStream bytes, short code, string value)
    {
        Span<byte> number = stackalloc byte[8];
        switch (code)
        {
            case >= 10 and <= 59 or >= 1010 and <= 1059:
                BinaryPrimitives.WriteDoubleLittleEndian(number, double.Parse(value, CultureInfo.InvariantCulture));
                bytes.Write(number);
                break;
            case >= 60 and <= 79:
                WriteShort(bytes, short.Parse(value, CultureInfo.InvariantCulture));
                break;
            case 310:
                bytes.WriteByte((byte)value.Length);
                bytes.Write(Encoding.ASCII.GetBytes(value));
                break;
            default:
                bytes.Write(Encoding.ASCII.GetBytes(value));
                bytes.WriteByte(0);
                break;
        }
    }

    private static void WriteShort(MemoryStream bytes, short value)
    {
        Span<byte> number = stackalloc byte[2];
        BinaryPrimitives.WriteInt16LittleEndian(number, value);
        bytes.Write(number);
    }
}
