using System.Collections.Immutable;
using System.Text;
using BuckGen.Quantities;

namespace BuckGen.Output.Pictures.Pdf;

/// <summary>
/// One of the standard fonts that every PDF reader has, so that the machine that writes needs no fonts. Holds which characters it
/// has in WinAnsi encoding, and how wide they are.
/// </summary>
/// <remarks>
/// Widths: the font's public metrics, in thousandths of the body height (from memory; a test compares them with a PDF reader's).
/// </remarks>
internal static class Helvetica
{
    private const byte Unknown = (byte)'?';
    private const int FirstCode = 32;

    /// <summary>Characters 0x80 to 0x9f of WinAnsi; a blank where it has none.</summary>
    private const string Special = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";

    private static readonly ImmutableArray<short> Widths =
    [
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, // to /
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, // 0 to ?
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, // @ to O
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, // P to _
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, // ` to o
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584, 0, // p to ~
        556, 0, 222, 556, 333, 1000, 556, 556, 333, 1000, 667, 333, 1000, 0, 611, 0, // euro to Z with caron
        0, 222, 222, 333, 333, 350, 556, 1000, 333, 1000, 500, 333, 944, 0, 500, 667, // quotes to Y with diaeresis
        278, 333, 556, 556, 556, 556, 260, 556, 333, 737, 370, 556, 584, 333, 737, 333, // to macron
        400, 584, 333, 333, 333, 556, 537, 278, 333, 333, 365, 556, 834, 834, 834, 611, // degree to turned ?
        667, 667, 667, 667, 667, 667, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278, // A to I with marks
        722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611, // Eth to sharp s
        556, 556, 556, 556, 556, 556, 889, 500, 556, 556, 556, 556, 278, 278, 278, 278, // a to i with marks
        556, 556, 556, 556, 556, 556, 556, 584, 611, 556, 556, 556, 556, 500, 556, 500, // eth to y with diaeresis
    ];

    /// <summary>The visible characters of a text, one byte each; those that the font lacks are question marks.</summary>
    public static byte[] Encode(string text) => [.. VisibleText.Escape(text).EnumerateRunes().Select(Code)];

    /// <summary>Width of a text, mm.</summary>
    /// <param name="text">The text.</param>
    /// <param name="height">Height of the letters' body, mm.</param>
    public static double Width(string text, double height) => Encode(text).Sum(c => Widths[c - FirstCode]) * height / 1000;

    /// <summary>The height at which a text fits a width, mm.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">The width, mm.</param>
    /// <param name="maxHeight">The height wanted, mm.</param>
    public static double HeightToFit(string text, double width, double maxHeight) =>
        Math.Min(maxHeight, width / Math.Max(1e-9, Width(text, 1)));

    private static byte Code(Rune character) => character.Value switch
    {
        >= 0x20 and <= 0x7e or >= 0xa0 and <= 0xff => (byte)character.Value,
        <= 0xffff when Special.IndexOf((char)character.Value, StringComparison.Ordinal) is >= 0 and var place =>
            (byte)(0x80 + place),
        _ => Unknown,
    };
}
