using System.Collections.Immutable;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>The notes of a drawing in a few words, for the message that nothing usable was left.</summary>
internal static class NoteSummary
{
    private const int MaxLength = 200;

    public static string Format(ImmutableArray<ReadNote> notes)
    {
        var ignored = notes.Where(n => n.Kind.EndsWith("-ignored", StringComparison.Ordinal)).Select(n => n.Message.TrimEnd('.'));
        var summary = string.Join("; ", ignored);
        return summary.Length == 0 ? "" : $" ({(summary.Length <= MaxLength ? summary : summary[..MaxLength] + "…")})";
    }
}
