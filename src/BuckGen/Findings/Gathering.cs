namespace BuckGen.Findings;

/// <summary>
/// Gathers what is found in very many places into one finding that counts them: no one reads a list of thousands.
/// </summary>
internal static class Gathering
{
    /// <summary>Findings with one id, up to which each is listed.</summary>
    public const int MaxListed = 20;

    /// <summary>The findings in their order; of a more frequent id, the finding at the worst place represents all.</summary>
    public static IEnumerable<Finding> Apply(IEnumerable<Finding> findings) =>
        findings.GroupBy(f => f.Id, StringComparer.Ordinal)
            .SelectMany(g => g.Skip(MaxListed).Any() ? [One([.. g])] : g.AsEnumerable());

    private static Finding One(Finding[] findings)
    {
        // OrderBy keeps the first of equals.
        var worst = findings.OrderByDescending(f => f.Severity).ThenByDescending(Excess).First();
        var rank = worst is { Value: not null, Limit: not null } ? ", this one the worst" : "";
        return worst with
        {
            Message = FormattableString
            .Invariant($"{worst.Message} There are {findings.Length} such places{rank}.")
        };
    }

    /// <summary>How far a value lies beyond its limit; 0 where there is no such number.</summary>
    private static double Excess(Finding finding) =>
        finding is { Value: { } value, Limit: { } limit } ? Math.Abs(value - limit) : 0;
}
