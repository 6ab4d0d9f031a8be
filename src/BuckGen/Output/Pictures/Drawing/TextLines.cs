using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Quantities;

namespace BuckGen.Output.Pictures.Drawing;

/// <summary>The text of pictures: its sizes, and lines that fit a width.</summary>
internal static class TextLines
{
    /// <summary>Height of the words of a picture, of its title, and from line to line, mm.</summary>
    public const double Height = 3.2, TitleHeight = 5, Spacing = 4.8;

    /// <summary>How many letters of the usual height fit a width.</summary>
    public static int LettersIn(double width) => (int)(width / (PictureText.UsualLetterWidth * Height));

    /// <summary>The words of a text in lines of at most the given number of letters; a longer word is cut.</summary>
    public static ImmutableArray<string> Wrap(string text, int letters)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = "";
        foreach (var whole in VisibleText.Escape(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
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

    /// <summary>The height at which a title fits a width, mm.</summary>
    public static double TitleToFit(string text, double width) =>
        Math.Min(TitleHeight, width / (PictureText.UsualLetterWidth * Math.Max(1, VisibleText.Escape(text).Length)));

    /// <summary>Lines under each other from a place down.</summary>
    public static IEnumerable<PictureText> Set(IEnumerable<string> lines, Vec2 first) =>
        lines.Select((line, i) =>
            new PictureText(first - new Vec2(0, i * Spacing), line, Height, TextAlign.Start, PictureColours.Black));
}
