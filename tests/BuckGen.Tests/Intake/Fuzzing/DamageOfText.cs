using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace BuckGen.Tests.Intake.Fuzzing;

/// <summary>The damages that know of numbers and lines.</summary>
internal static partial class Damage
{
    private static byte[] ExtremeNumber(byte[] content, DamageSource source) =>
        NumberReplaced(content, source, _ => source.Any(Tokens.Numbers));

    /// <summary>A number a little or a lot beside the old one: gaps, crossings and overlaps rather than nonsense.</summary>
    private static byte[] NearNumber(byte[] content, DamageSource source) => NumberReplaced(content, source, old =>
    {
        _ = double.TryParse(old, CultureInfo.InvariantCulture, out var number);
        return source.Random.Next(4) switch
        {
            0 => Text(number + Math.Pow(10, source.Random.Next(-7, 3)) * source.Random.NextDouble()),
            1 => Text(-number),
            2 => Text(number * Math.Pow(10, source.Random.Next(-3, 4))),
            _ => Text(Math.Round(number) + source.Random.Next(-1, 2)),
        };
    });

    private static byte[] NumberFromElsewhere(byte[] content, DamageSource source) =>
        NumberReplaced(content, source, _ => NumberAt(content, source) is { Success: true } other ? other.Value : "0");

    private static byte[] SwapLines(byte[] content, DamageSource source)
    {
        var lines = Lines(content);
        var (a, b) = (source.Random.Next(lines.Length), source.Random.Next(lines.Length));
        (lines[a], lines[b]) = (lines[b], lines[a]);
        return Bytes(lines);
    }

    private static byte[] RepeatLines(byte[] content, DamageSource source)
    {
        var lines = Lines(content);
        var start = source.Random.Next(lines.Length);
        var part = lines[start..Math.Min(lines.Length, start + 1 + source.Random.Next(60))];
        var copies = Enumerable.Repeat(part, 1 + source.Random.Next(1 + source.Random.Next(MaxCopies))).SelectMany(p => p);
        return Bytes([.. lines[..start], .. copies, .. lines[start..]]);
    }

    private static byte[] NumberReplaced(byte[] content, DamageSource source, Func<string, string> replacement)
    {
        if (NumberAt(content, source) is not { Success: true } found) return content;
        return [.. content.AsSpan(0, found.Index), .. Encoding.Latin1.GetBytes(replacement(found.Value)),
            .. content.AsSpan(found.Index + found.Length)];
    }

    private static Match NumberAt(byte[] content, DamageSource source) =>
        Number().Match(Encoding.Latin1.GetString(content), source.Random.Next(content.Length + 1));

    private static string[] Lines(byte[] content) => Encoding.Latin1.GetString(content).Split('\n');

    private static byte[] Bytes(IEnumerable<string> lines) => Encoding.Latin1.GetBytes(string.Join('\n', lines));

    private static string Text(double number) => number.ToString("R", CultureInfo.InvariantCulture);

    [GeneratedRegex(@"[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d+)?")]
    private static partial Regex Number();
}
