using System.Collections.Immutable;

namespace BuckGen.Findings;

/// <summary>
/// The one place where findings become the list that console, report, pictures and summary show: gathered, silenced, the gravest
/// first, then from the bottom up. Findings of one kind stand together and share a number, from 1.
/// </summary>
internal static class FindingList
{
    /// <summary>The list of what was found on a design.</summary>
    /// <param name="found">The findings, in the order in which they were made.</param>
    /// <param name="silences">The findings that the maker accepts.</param>
    public static ImmutableArray<Finding> Create(IEnumerable<Finding> found, ImmutableArray<Silence> silences) =>
        Numbered(Silencing.Apply(Gathering.Apply(found), silences));

    /// <summary>A list with what was found afterwards, on cutting or on files. That can't be silenced.</summary>
    public static ImmutableArray<Finding> Append(ImmutableArray<Finding> list, IEnumerable<Finding> further) =>
        Numbered(Gathering.Apply(further).Concat(list));

    private static ImmutableArray<Finding> Numbered(IEnumerable<Finding> findings) =>
        [.. findings.OrderBy(f => f.Height ?? double.NegativeInfinity).GroupBy(KindOf).OrderByDescending(g => g.Key.Severity)
            .SelectMany((kind, i) => kind.Select(f => f with { Number = i + 1 }))];

    /// <summary>What findings of one kind share; failures of plug-ins differ by plug-in.</summary>
    private static (Severity Severity, string Id, string? Silenced, string Whose) KindOf(Finding finding) =>
        (finding.Severity, finding.Id, finding.Silenced, finding.Id == "plugin-failed" ? finding.Message : "");
}
