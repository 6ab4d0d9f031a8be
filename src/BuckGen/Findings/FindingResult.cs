using System.Collections.Immutable;

namespace BuckGen.Findings;

/// <summary>Findings of foreign code.</summary>
internal static class FindingResult
{
    /// <summary>Maximum number of findings in one result, and of characters in an id and in a text.</summary>
    private const int MaxFindings = 1000, MaxIdLength = 60, MaxTextLength = 2000;

    /// <summary>The findings, each fit for files and for the console.</summary>
    /// <exception cref="ForeignResultException">One of them can't be used.</exception>
    public static ImmutableArray<Finding> Validate(IEnumerable<Finding>? findings) =>
        ForeignResult.List(findings, MaxFindings, "finding", Fault);

    private static string? Fault(Finding finding) =>
        finding.Id is not { Length: > 0 and <= MaxIdLength } id
            || !id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.')
            ? "has an id that is not made of 1 to 60 letters, digits, \"-\", \"_\" and \".\""
            : !Enum.IsDefined(finding.Severity) ? $"({id}) has the unknown severity {(int)finding.Severity}"
            : (Fault("message", finding.Message) ?? Fault("remedy", finding.Remedy) ?? Fault("source", finding.Source)
                ?? Fault("reason for silence", finding.Silenced ?? "")) is { } words ? $"({id}) has a {words}"
            : finding.Place is { } place && !(ForeignResult.IsPlace(place.X) && ForeignResult.IsPlace(place.Y))
            ? $"({id}) has a place that is not a place within 1 km"
            : !(ForeignResult.IsNumber(finding.Height) && ForeignResult.IsNumber(finding.Value)
                && ForeignResult.IsNumber(finding.Limit)) ? $"({id}) has a height, value or limit that is not a number up to 1e12"
            : null;

    private static string? Fault(string what, string? words) =>
        ForeignResult.WordsFault(words, MaxTextLength) is { } why ? $"{what} that {why}" : null;
}
