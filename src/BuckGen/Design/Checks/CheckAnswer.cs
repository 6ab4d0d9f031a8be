using System.Collections.Immutable;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>What a check finds.</summary>
internal static class CheckAnswer
{
    /// <summary>The findings.</summary>
    /// <exception cref="AnswerException">A plug-in's check returned something that can't be used.</exception>
    public static ImmutableArray<Finding> Of(IDesignCheck check, DesignView design) =>
        ForeignCode.IsForeign(check) ? FindingAnswer.Of(check.Look(design)) : [.. check.Look(design)];
}
