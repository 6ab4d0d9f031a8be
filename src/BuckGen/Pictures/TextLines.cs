using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Pictures;

/// <summary>Text in lines that fit a width.</summary>
internal static class TextLines
{
    /// <summary>The words of a text in lines of at most so many letters; a longer word is cut.</summary>
    public static ImmutableArray<string> Wrap(string text, int letters)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        foreach (var whole in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var word = whole;
            if (line.Length > 0 && line.Length + 1 + word.Length > letters)
            {
                lines.Add(line);
                line = "";
            }

            for (; word.Length > letters; word = word[letters..]) lines.Add(word[..letters]);
            line = line.Length == 0 ? word : $"{line} {word}";
        }

        if (line.Length > 0) lines.Add(line);
        return lines.ToImmutable();
    }

    /// <summary>The height at which a text fits a width, at most the one given, mm.</summary>
    public static double HeightToFit(string text, double height, double width) =>
        Math.Min(height, width / (PictureText.UsualLetterWidth * Math.Max(1, text.Length)));

    /// <summary>Lines under each other from a place down.</summary>
    public static IEnumerable<PictureText> Set(IEnumerable<string> lines, Vec2 first, double height, double spacing, string colour) =>
        lines.Select((line, i) => new PictureText(first - new Vec2(0, i * spacing), line, height, TextAlign.Start, colour));
}
