using BuckGen.Cli.Terminals;
using BuckGen.Design.Bucks;
using BuckGen.Quantities;
using BuckGen.Settings;

namespace BuckGen.Cli.Commands;

/// <summary>Two lengths in one word, as "600x400mm".</summary>
internal static class SizeText
{
    /// <summary>The lengths.</summary>
    /// <param name="setting">What they are given for, for the message.</param>
    /// <param name="text">What was given.</param>
    public static RectangleSize Parse(SizeSetting setting, string text)
    {
        var parts = text.Split('x', 'X');
        // "600x400mm": the unit at the end counts for both.
        var unit = parts.Length == 2 ? new string([.. parts[1].Where(c => char.IsAsciiLetter(c) || c == '"')]) : "";
        var first = parts[0].Any(char.IsAsciiLetter) ? parts[0] : parts[0] + unit;
        return parts.Length == 2 && QuantityText.TryLength(first, out var width)
            && QuantityText.TryLength(parts[1], out var height)
            ? new(width, height)
            : throw new UsageException($"{setting.Option} is '{text}'; it must be two lengths, such as 600x400mm.");
    }
}
