using System.Collections.Immutable;

namespace BuckGen.Findings;

/// <summary>Turns findings that the maker accepts into notes that show the reason.</summary>
internal static class Silencing
{
    /// <summary>Id of the note about an entry of silence without a finding.</summary>
    public const string IdleId = "silence-idle";

    /// <summary>The findings, and a note for each entry of silence without a finding.</summary>
    public static IEnumerable<Finding> Apply(IEnumerable<Finding> findings, ImmutableArray<Silence> silences)
    {
        var met = new HashSet<string>(StringComparer.Ordinal);
        foreach (var finding in findings)
        {
            var silence = silences.FirstOrDefault(s => s.Id == finding.Id);
            if (silence is null)
            {
                yield return finding;
                continue;
            }

            met.Add(silence.Id);
            yield return finding with { Severity = Severity.Note, Silenced = silence.Reason };
        }

        foreach (var idle in silences.Where(s => !met.Contains(s.Id)))
            yield return new(IdleId, Severity.Note,
                $"\"{idle.Id}\" is silenced ({idle.Reason}), but the design has no such finding.",
                "Remove the entry from silence, or check its id; findings about cutting can't be silenced.");
    }
}
