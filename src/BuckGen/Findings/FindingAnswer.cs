using System.Collections.Immutable;

namespace BuckGen.Findings;

/// <summary>Findings of foreign code.</summary>
internal static class FindingAnswer
{
    /// <summary>Largest number of findings in one result, and of characters in an id and in a text.</summary>
    private const int Most = 1000, LongestId = 60, LongestText = 2000;

    /// <summary>The findings, each fit for files and for the console.</summary>
    /// <exception cref="AnswerException">One of them can't be used.</exception>
    public static ImmutableArray<Finding> Of(IEnumerable<Finding>? findings) => Answer.List(findings, Most, "finding", Fault);

    private static string? Fault(Finding finding) =>
        finding.Id is not { Length: > 0 and <= LongestId } id || !id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.')
            ? "has an id that is not made of 1 to 60 letters, digits, \"-\", \"_\" and \".\""
            : !Enum.IsDefined(finding.Severity) ? $"({id}) has the unknown severity {(int)finding.Severity}"
            : (Fault("message", finding.Message) ?? Fault("remedy", finding.Remedy) ?? Fault("source", finding.Source) ?? Fault("reason for silence", finding.Silenced ?? "")) is { } words ? $"({id}) has a {words}"
            : finding.Place is { } place && !(Answer.IsPlace(place.X) && Answer.IsPlace(place.Y)) ? $"({id}) has a place that is no place within 1 km"
            : !(Answer.IsNumber(finding.Height) && Answer.IsNumber(finding.Value) && Answer.IsNumber(finding.Limit)) ? $"({id}) has a height, value or limit that is no number up to 1e12"
            : null;

    private static string? Fault(string what, string? words) => Answer.WordsFault(words, LongestText) is { } why ? $"{what} that {why}" : null;
}
