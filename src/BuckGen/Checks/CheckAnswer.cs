using System.Collections.Immutable;
using BuckGen.Findings;

namespace BuckGen.Checks;

/// <summary>What a check finds.</summary>
internal static class CheckAnswer
{
    /// <summary>The findings.</summary>
    /// <exception cref="AnswerException">A check of others gave something that can't be used.</exception>
    public static ImmutableArray<Finding> Of(IDesignCheck check, DesignView design) =>
        ForeignCode.IsForeign(check) ? FindingAnswer.Of(check.Look(design)) : [.. check.Look(design)];
}
