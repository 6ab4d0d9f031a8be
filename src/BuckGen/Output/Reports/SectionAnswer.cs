using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Findings;

namespace BuckGen.Output.Reports;

/// <summary>What stands in a section of the process card.</summary>
internal static class SectionAnswer
{
    /// <summary>Most lines of a plug-in's section, and most characters of a line.</summary>
    private const int Most = 1000, LongestLine = 2000;

    /// <summary>The lines.</summary>
    /// <exception cref="AnswerException">A plug-in's section returned something that can't be used.</exception>
    public static ImmutableArray<string> Of(IReportSection section, CutPlan plan) => ForeignCode.IsForeign(section)
        ? Answer.List(section.Lines(plan), Most, "line", line => Answer.WordsFault(line, LongestLine))
        : [.. section.Lines(plan)];
}
