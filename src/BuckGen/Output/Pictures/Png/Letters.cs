using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BuckGen.Geometry;
using BuckGen.Quantities;

namespace BuckGen.Output.Pictures.Png;

/// <summary>
/// The letters of pictures of pixels: Latin, Greek and the signs of drawings, so that no font need be on the machine. A character
/// that is not among them is an empty box, as wide as a letter.
/// </summary>
/// <remarks>Source: DejaVu Sans 2.37, a subset as text (letters.txt); its licence lies beside it and in the packages.</remarks>
internal static class Letters
{
    /// <summary>Straight pieces for each curve.</summary>
    private const int Pieces = 4;

    private static readonly FrozenDictionary<int, string> Lines = Read();
    private static readonly ConcurrentDictionary<int, Letter> Known = new();

    private sealed record Letter(double Advance, ImmutableArray<ImmutableArray<Vec2>> Loops);

    /// <summary>Width of a text for a body height of 1.</summary>
    public static double Width(string text) => VisibleText.Escape(text).EnumerateRunes().Sum(r => Find(r).Advance);

    /// <summary>True when a character is drawn as itself.</summary>
    public static bool Has(Rune character) => Lines.ContainsKey(character.Value);

    /// <summary>
    /// The outlines of a text for a body height of 1, from the start of its base line, y up; what is within two is inside.
    /// </summary>
    public static IEnumerable<IEnumerable<Vec2>> Outlines(string text)
    {
        var start = 0.0;
        foreach (var letter in VisibleText.Escape(text).EnumerateRunes().Select(Find))
        {
            var here = start;
            foreach (var loop in letter.Loops) yield return loop.Select(p => p + new Vec2(here, 0));
            start += letter.Advance;
        }
    }

    private static Letter Find(Rune character) =>
        Known.GetOrAdd(Has(character) ? character.Value : 0, code => Parsed(Lines[code]));

    /// <summary>
    /// Advance, then the outline: m starts a loop, l is a line, q a curve with its handle; 2048 units are the body's height.
    /// </summary>
    private static Letter Parsed(string line)
    {
        const double Em = 2048;
        var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var loops = new List<List<Vec2>>();
        for (var i = 1; i < words.Length;)
        {
            var kind = words[i++];
            var to = Place();
            if (kind == "m") loops.Add([to]);
            else if (kind == "l") loops[^1].Add(to);
            else
            {
                var (from, handle, end) = (loops[^1][^1], to, Place());
                for (var piece = 1; piece <= Pieces; piece++)
                {
                    var t = (double)piece / Pieces;
                    loops[^1].Add(from * ((1 - t) * (1 - t)) + handle * (2 * t * (1 - t)) + end * (t * t));
                }
            }

            Vec2 Place() => new(Number(words[i++]) / Em, Number(words[i++]) / Em);
        }

        return new(Number(words[0]) / Em, [.. loops.Select(l => l.ToImmutableArray())]);
    }

    private static double Number(string word) => int.Parse(word, CultureInfo.InvariantCulture);

    private static FrozenDictionary<int, string> Read()
    {
        using var stream = typeof(Letters).Assembly.GetManifestResourceStream("BuckGen.Output.Pictures.Png.letters.txt")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .ToFrozenDictionary(l => int.Parse(l.AsSpan(0, 4), NumberStyles.HexNumber, CultureInfo.InvariantCulture),
                l => l[5..]);
    }
}
