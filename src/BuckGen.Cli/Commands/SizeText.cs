using BuckGen.Cli.Terminals;
using BuckGen.Quantities;

namespace BuckGen.Cli.Commands;

/// <summary>Two lengths in one word, as "600x400mm".</summary>
internal static class SizeText
{
    /// <summary>The lengths, mm.</summary>
    /// <param name="option">The option they were given with, for the message.</param>
    /// <param name="text">What was given.</param>
    public static (double Width, double Height) Parse(string option, string text)
    {
        var parts = text.Split('x', 'X');
        // "600x400mm": the unit at the end counts for both.
        var unit = parts.Length == 2 ? new string([.. parts[1].Where(c => char.IsAsciiLetter(c) || c == '"')]) : "";
        var first = parts[0].Any(char.IsAsciiLetter) ? parts[0] : parts[0] + unit;
        return parts.Length == 2 && QuantityText.TryLength(first, out var width) && QuantityText.TryLength(parts[1], out var height)
            ? (width, height)
            : throw new UsageException($"{option} is '{text}'; it must be two lengths, such as 600x400mm.");
    }
}
