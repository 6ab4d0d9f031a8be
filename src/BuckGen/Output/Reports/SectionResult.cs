using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Findings;

namespace BuckGen.Output.Reports;

/// <summary>What stands in a section of the process card.</summary>
internal static class SectionResult
{
    /// <summary>Maximum number of lines of a plug-in's section, and of characters of a line.</summary>
    private const int MaxLines = 1000, MaxLineLength = 2000;

    /// <summary>The lines.</summary>
    /// <exception cref="ForeignResultException">A plug-in's section returned something that can't be used.</exception>
    public static ImmutableArray<string> GetLines(IReportSection section, CutPlan plan) => ForeignCode.IsForeign(section)
        ? ForeignResult.List(section.Lines(plan), MaxLines, "line", line => ForeignResult.WordsFault(line, MaxLineLength))
        : [.. section.Lines(plan)];
}
