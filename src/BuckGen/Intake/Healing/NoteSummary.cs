using System.Collections.Immutable;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>The notes of a drawing in a few words, for the message that nothing usable was left.</summary>
internal static class NoteSummary
{
    private const int Most = 200;

    public static string Of(ImmutableArray<ReadNote> notes)
    {
        var ignored = notes.Where(n => n.Kind.EndsWith("-ignored", StringComparison.Ordinal)).Select(n => n.Message.TrimEnd('.'));
        var summary = string.Join("; ", ignored);
        return summary.Length == 0 ? "" : $" ({(summary.Length <= Most ? summary : summary[..Most] + "…")})";
    }
}
