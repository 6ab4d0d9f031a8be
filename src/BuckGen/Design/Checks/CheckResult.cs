using System.Collections.Immutable;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>What a check finds.</summary>
internal static class CheckResult
{
    /// <summary>The findings.</summary>
    /// <exception cref="ForeignResultException">A plug-in's check returned something that can't be used.</exception>
    public static ImmutableArray<Finding> Run(IDesignCheck check, DesignView design) =>
        ForeignCode.IsForeign(check) ? FindingResult.Validate(check.Run(design)) : [.. check.Run(design)];
}
