using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace BuckGen.Tests.Intake.Fuzzing;

/// <summary>
/// Damages that leave the form of a file whole: its entities or elements are repeated, lost, moved and mixed with those of
/// other files, and its numbers changed. They get past the first checks, into the drawing itself.
/// </summary>
internal static partial class Damage
{
    public static readonly Func<byte[], DamageSource, byte[]>[] Gentle =
        [RepeatPart, LosePart, MovePart, ForeignPart, ChangeValue, ChangeValue, ChangeValue, ChangeValue];

    private static byte[] RepeatPart(byte[] content, DamageSource source)
    {
        if (PartOf(content, source) is not { } part) return content;
        var copies = 1 + source.Random.Next(1 + source.Random.Next(MaxCopies));
        return Inserted(content, part.Index, [.. Enumerable.Repeat(BytesOf(part), copies).SelectMany(b => b)]);
    }

    private static byte[] LosePart(byte[] content, DamageSource source) => PartOf(content, source) is { } part
        ? [.. content.AsSpan(0, part.Index), .. content.AsSpan(part.Index + part.Length)] : content;

    private static byte[] MovePart(byte[] content, DamageSource source) => Put(PartOf(content, source), content, source);

    private static byte[] ForeignPart(byte[] content, DamageSource source) => Put(PartOf(source.Other, source), content, source);

    private static byte[] ChangeValue(byte[] content, DamageSource source)
    {
        var values = (source.IsDxf ? DxfValue() : SvgValue()).Matches(Encoding.Latin1.GetString(content));
        if (values.Count == 0) return content;
        var value = source.Any(values).Groups["value"];
        var number = double.TryParse(value.Value, CultureInfo.InvariantCulture, out var read) ? read : 0;
        var changed = source.Random.Next(6) switch
        {
            0 => Text(number + Math.Pow(10, source.Random.Next(-7, 3)) * source.Random.NextDouble()),
            1 => Text(-number),
            2 => Text(number * Math.Pow(10, source.Random.Next(-9, 10))),
            3 => source.Any(Tokens.Numbers),
            4 => source.Any(values).Groups["value"].Value,
            _ => Text(Math.Round(number) + source.Random.Next(-2, 3)),
        };
        return [.. content.AsSpan(0, value.Index), .. Encoding.Latin1.GetBytes(changed),
            .. content.AsSpan(value.Index + value.Length)];
    }

    private static byte[] Put(Match? part, byte[] content, DamageSource source) =>
        part is not null && PartOf(content, source) is { } place ? Inserted(content, place.Index, BytesOf(part)) : content;

    private static Match? PartOf(byte[] content, DamageSource source)
    {
        var parts = (source.IsDxf ? DxfPart() : SvgPart()).Matches(Encoding.Latin1.GetString(content));
        return parts.Count == 0 ? null : source.Any(parts);
    }

    private static byte[] BytesOf(Match part) => Encoding.Latin1.GetBytes(part.Value);

    [GeneratedRegex(@"^ *0\r?\n(?!SECTION|ENDSEC|EOF|TABLE|ENDTAB)[A-Z].*\n(?: *[1-9]\d*\r?\n.*\n)*", RegexOptions.Multiline)]
    private static partial Regex DxfPart();

    [GeneratedRegex(@"<[a-z][^<>]*/>")]
    private static partial Regex SvgPart();

    [GeneratedRegex(@"^ *(?:[1-5]\d|7\d|9\d|2[1-3]0) *\r?\n *(?<value>[-+.\deE]+) *\r?$", RegexOptions.Multiline)]
    private static partial Regex DxfValue();

    [GeneratedRegex(@"(?<=[""' ,(a-zA-Z])(?<value>[-+]?\d+\.?\d*)(?=[""' ,)a-zA-Z%])")]
    private static partial Regex SvgValue();
}
