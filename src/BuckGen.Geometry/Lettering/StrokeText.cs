using System.Collections.Immutable;

namespace BuckGen.Geometry.Lettering;

/// <summary>Lays out a line of text in the single-stroke alphabet.</summary>
internal static class StrokeText
{
    /// <summary>
    /// The strokes of a text, left to right, on the baseline y = 0 and in a box from x = 0 to <see cref="Width"/>.
    /// </summary>
    /// <param name="text">Characters of <see cref="StrokeAlphabet.Characters"/>; may be empty.</param>
    /// <param name="capHeight">Height of a capital, mm, above 0.</param>
    /// <exception cref="ArgumentException">A character is not in the alphabet; the message names it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The height is not above 0, or not finite.</exception>
    public static ImmutableArray<Stroke> Layout(string text, double capHeight)
    {
        var strokes = ImmutableArray.CreateBuilder<Stroke>();
        var start = 0.0;
        foreach (var glyph in Glyphs(text, capHeight))
        {
            var left = start + glyph.Before;
            foreach (var stroke in glyph.Strokes)
                strokes.Add(
                    new Stroke([
                        .. stroke.Vertices.Select(v => new StrokeVertex((left + v.X) * capHeight, v.Y * capHeight, v.Bulge))]));
            start += glyph.Advance;
        }

        return strokes.ToImmutable();
    }

    /// <summary>Width of a text in mm: the sum of its characters' widths, each with the room on its two sides.</summary>
    /// <param name="text">Characters of <see cref="StrokeAlphabet.Characters"/>; may be empty.</param>
    /// <param name="capHeight">Height of a capital, mm, above 0.</param>
    /// <exception cref="ArgumentException">A character is not in the alphabet; the message names it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The height is not above 0, or not finite.</exception>
    public static double Width(string text, double capHeight) => Glyphs(text, capHeight).Sum(glyph => glyph.Advance) * capHeight;

    private static StrokeGlyph[] Glyphs(string text, double capHeight)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!(capHeight > 0) || !double.IsFinite(capHeight))
            throw new ArgumentOutOfRangeException(nameof(capHeight), capHeight, "The cap height of a text must be above 0 mm.");
        return [.. text.Select(character => StrokeAlphabet.TryGet(character, out var glyph)
            ? glyph
            : throw new ArgumentException(
                $"The character '{character}' (U+{(int)character:X4}) cannot be engraved; the marks are written in: "
                + $"{StrokeAlphabet.Characters}",
                nameof(text)))];
    }
}
