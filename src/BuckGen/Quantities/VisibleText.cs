using System.Globalization;
using System.Text;

namespace BuckGen.Quantities;

/// <summary>
/// Text of others, such as names from drawings, catalogs and plug-ins, with nothing in it that acts instead of being seen.
/// Characters that steer terminals and printers, break lines, turn the direction of reading or take no room are shown by their
/// codes.
/// </summary>
public static class VisibleText
{
    /// <summary>Stands where text was cut.</summary>
    private const string Mark = " [...] ";

    /// <summary>
    /// The text in one line of visible characters: a line break becomes <c>\n</c>, U+202E becomes <c>\u202E</c>.
    /// </summary>
    /// <param name="text">Any text, lone surrogates included. What this method gave comes back unchanged.</param>
    /// <param name="maxLength">The most characters given, at least 20. A longer text loses its middle: its start says what it is
    /// about, its end what to do.</param>
    public static string Escape(string text, int maxLength = int.MaxValue)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentOutOfRangeException.ThrowIfLessThan(maxLength, 20);
        return Cut(Escaped(text), maxLength);
    }

    /// <summary>Several lines, each of them visible.</summary>
    internal static string Lines(string text) => string.Join('\n', text.Split('\n').Select(Escaped));

    /// <summary>True for a character that is not seen, or that changes how others are seen.</summary>
    internal static bool IsHidden(Rune character) => Rune.GetUnicodeCategory(character) is
            UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
                or UnicodeCategory.ParagraphSeparator
        // Joiners and fillers without a shape; Unicode counts them among marks and letters.
        || character.Value is 0x034F or 0x115F or 0x1160 or 0x3164 or 0xFFA0
        // Places that Unicode keeps for more of the kind.
        || character.Value is 0x2065 or >= 0xE0000 and <= 0xE0FFF
        // No characters at all, and forbidden in XML.
        || (character.Value & 0xFFFE) == 0xFFFE || character.Value is >= 0xFDD0 and <= 0xFDEF;

    private static string Escaped(string text)
    {
        var shown = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length;)
        {
            if (!Rune.TryGetRuneAt(text, i, out var character))
            {
                // Half of a pair.
                shown.Append(CultureInfo.InvariantCulture, $"\\u{(int)text[i++]:X4}");
                continue;
            }

            i += character.Utf16SequenceLength;
            if (IsHidden(character)) shown.Append(Code(character.Value));
            else shown.Append(character);
        }

        return shown.ToString();
    }

    private static string Code(int character) => character switch
    {
        '\n' => @"\n",
        '\r' => @"\r",
        '\t' => @"\t",
        <= 0xFFFF => string.Create(CultureInfo.InvariantCulture, $"\\u{character:X4}"),
        _ => string.Create(CultureInfo.InvariantCulture, $"\\U{character:X8}"),
    };

    private static string Cut(string shown, int maxLength)
    {
        if (shown.Length <= maxLength) return shown;
        var end = (maxLength - Mark.Length) / 3;
        var start = maxLength - Mark.Length - end;
        // A pair of surrogates stays whole.
        if (char.IsHighSurrogate(shown[start - 1])) start--;
        if (char.IsLowSurrogate(shown[^end])) end--;
        return shown[..start] + Mark + shown[^end..];
    }
}
