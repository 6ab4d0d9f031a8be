using System.Text;

namespace BuckGen.Tests.Intake.Fuzzing;

/// <summary>Where a damage takes its choices from.</summary>
/// <param name="Random">The dice of this mutant.</param>
/// <param name="Other">Another file of the corpus.</param>
/// <param name="IsDxf">What the file is.</param>
internal sealed record DamageSource(Random Random, byte[] Other, bool IsDxf)
{
    /// <summary>A place in a file, and how many bytes from there, small more often than large.</summary>
    public (int Start, int Length) Chunk(byte[] content)
    {
        var start = Random.Next(content.Length + 1);
        return (start, Math.Min(content.Length - start, Random.Next(1 + (1 << Random.Next(14)))));
    }

    public T Any<T>(IReadOnlyList<T> list) => list[Random.Next(list.Count)];
}

/// <summary>The ways in which a file is damaged; each gives a new file.</summary>
internal static partial class Damage
{
    private const int MaxCopies = 40;

    public static readonly Func<byte[], DamageSource, byte[]>[] All =
    [
        FlipBits, SetBytes, Delete, Repeat, Swap, Splice, CutOff, InsertToken, InsertToken,
        ExtremeNumber, ExtremeNumber, ExtremeNumber, NearNumber, NearNumber, NumberFromElsewhere, SwapLines, RepeatLines,
        BinaryNumber,
    ];

    private static byte[] FlipBits(byte[] content, DamageSource source) =>
        Changed(content, source, b => (byte)(b ^ (1 << source.Random.Next(8))));

    private static byte[] SetBytes(byte[] content, DamageSource source) =>
        Changed(content, source, _ => (byte)source.Random.Next(256));

    private static byte[] Delete(byte[] content, DamageSource source)
    {
        var (start, length) = source.Chunk(content);
        return [.. content.AsSpan(0, start), .. content.AsSpan(start + length)];
    }

    private static byte[] Repeat(byte[] content, DamageSource source)
    {
        var (start, length) = source.Chunk(content);
        var copies = 1 + source.Random.Next(1 + source.Random.Next(MaxCopies));
        return Inserted(content, start, [.. Enumerable.Repeat(content[start..(start + length)], copies).SelectMany(c => c)]);
    }

    private static byte[] Swap(byte[] content, DamageSource source)
    {
        var (start, length) = source.Chunk(content);
        var rest = Delete(content, source);
        return Inserted(rest, source.Random.Next(rest.Length + 1), content[start..(start + length)]);
    }

    private static byte[] Splice(byte[] content, DamageSource source)
    {
        var (start, length) = source.Chunk(source.Other);
        return Inserted(content, source.Random.Next(content.Length + 1), source.Other[start..(start + length)]);
    }

    private static byte[] CutOff(byte[] content, DamageSource source) => content[..source.Random.Next(content.Length + 1)];

    private static byte[] InsertToken(byte[] content, DamageSource source)
    {
        var token = Encoding.Latin1.GetBytes(source.Any(source.IsDxf ? Tokens.Dxf : Tokens.Svg));
        // Most tokens only mean something where a line, a tag or an attribute may begin.
        ReadOnlySpan<byte> before = source.IsDxf ? "\n"u8 : source.Random.Next(2) == 0 ? ">"u8 : " "u8;
        var from = source.Random.Next(content.Length + 1);
        var gap = content.AsSpan(from).IndexOf(before);
        return Inserted(content, gap < 0 ? from : from + gap + 1, token);
    }

    private static byte[] BinaryNumber(byte[] content, DamageSource source)
    {
        if (content.Length < 8) return content;
        var result = content.ToArray();
        BitConverter.GetBytes(source.Any(Tokens.Doubles)).CopyTo(result, source.Random.Next(content.Length - 7));
        return result;
    }

    private static byte[] Changed(byte[] content, DamageSource source, Func<byte, byte> change)
    {
        if (content.Length == 0) return content;
        var result = content.ToArray();
        for (var left = 1 + source.Random.Next(8); left > 0; left--)
        {
            var place = source.Random.Next(result.Length);
            result[place] = change(result[place]);
        }

        return result;
    }

    private static byte[] Inserted(byte[] content, int place, byte[] addition) =>
        [.. content.AsSpan(0, place), .. addition, .. content.AsSpan(place)];
}
