using System.Globalization;
using System.Text;

namespace BuckGen.Dxf.Reading.Groups;

/// <summary>Resolves <c>\U+XXXX</c>, the way DXF spells characters outside the file's encoding.</summary>
internal static class UnicodeEscapes
{
    private const string Mark = "\\U+";
    private const int Digits = 4;

    public static string Resolve(string text)
    {
        if (!text.Contains(Mark, StringComparison.OrdinalIgnoreCase))
            return text;
        var result = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length;)
        {
            if (Escape(text.AsSpan(i)) is { } character)
            {
                result.Append(character);
                i += Mark.Length + Digits;
            }
            else
            {
                result.Append(text[i++]);
            }
        }

        return result.ToString();
    }

    private static char? Escape(ReadOnlySpan<char> text) =>
        text.Length >= Mark.Length + Digits
        && text.StartsWith(Mark, StringComparison.OrdinalIgnoreCase)
        && ushort.TryParse(text.Slice(Mark.Length, Digits), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture,
            out var code)
            ? (char)code
            : null;
}
