using System.Collections.Immutable;
using System.Globalization;

namespace BuckGen.Findings;

/// <summary>Checks every piece of what foreign code returns and keeps a copy, so that nothing changes afterwards.</summary>
internal static class ForeignResult
{
    /// <summary>The farthest that anything may lie from the origin, mm, and the largest number that may be reported.</summary>
    public const double MaxCoordinate = 1e6, MaxNumber = 1e12;

    /// <summary>All items. Reading stops at the limit, so a sequence may be endless.</summary>
    /// <param name="given">What the foreign code returned.</param>
    /// <param name="max">How many may be given.</param>
    /// <param name="what">What one of them is, such as "line".</param>
    /// <param name="fault">What is wrong with one, in words that follow "line 3"; null when nothing is.</param>
    /// <exception cref="ForeignResultException">Nothing was given, too much, or something that can't be used.</exception>
    public static ImmutableArray<T> List<T>(IEnumerable<T>? given, int max, string what, Func<T, string?> fault)
    {
        if (given is null or ImmutableArray<T> { IsDefault: true })
            throw new ForeignResultException($"it gave no list of {what}s");
        var items = ImmutableArray.CreateBuilder<T>();
        foreach (var item in given)
        {
            if (items.Count == max)
                throw new ForeignResultException(string.Create(CultureInfo.InvariantCulture, $"it gave more than {max} {what}s"));
            var why = item is null ? "is null" : fault(item);
            if (why is not null)
                throw new ForeignResultException(string.Create(CultureInfo.InvariantCulture, $"{what} {items.Count + 1} {why}"));
            items.Add(item);
        }

        return items.ToImmutable();
    }

    /// <summary>True for the coordinate, or the length, of something that can be made.</summary>
    public static bool IsPlace(double coordinate) => Math.Abs(coordinate) <= MaxCoordinate;

    /// <summary>True for a number that can be reported; true when there is none.</summary>
    public static bool IsNumber(double? number) => number is null || Math.Abs(number.Value) <= MaxNumber;

    /// <summary>What is wrong with words, phrased to follow their name; null when nothing is.</summary>
    /// <param name="words">The words.</param>
    /// <param name="maxLength">How many characters they may have.</param>
    public static string? WordsFault(string? words, int maxLength) =>
        words is null ? "is null" : words.Length > maxLength
            ? string.Create(CultureInfo.InvariantCulture, $"has {words.Length} characters; the limit is {maxLength}") : null;
}
