using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;

namespace BuckGen.Design.Trimming;

/// <summary>What a maker should know about a trim jig.</summary>
internal static class JigFindings
{
    public static IEnumerable<Finding> Find(
        JigSpec jig, StackPlan plan, StackSpec spec, ImmutableArray<Layer> core)
    {
        if (Math.Abs(plan.Miss) > spec.DepthTolerance)
            yield return new("jig-height-missed", Severity.Warning,
                FormattableString.Invariant(
                    $"The stock gives the jig a height of {plan.Depth:F2} mm, {Math.Abs(plan.Miss):F2} mm ")
                    + FormattableString.Invariant($"{(plan.Miss > 0 ? "more" : "less")} than the cut at ")
                    + FormattableString.Invariant($"{plan.Depth - plan.Miss:F2} mm over the ")
                    + FormattableString.Invariant($"{FlangeFaceText.Format(TrimJig.FaceUnder(plan, jig))}."),
                "Add a thinner stock, or cut at the height it gives.")
            {
                Height = plan.Depth,
                Value = plan.Miss,
                Limit = spec.DepthTolerance,
            };
        if (TrimJig.FaceUnder(plan, jig) == FlangeFace.Upper)
            yield return new("jig-on-flange", Severity.Note,
                "The ring of the jig is one board high and has no room for the flange. It stands on it, so its height counts "
                    + "from the upper side of the flange.",
                "Lay strips of the same plastic under the outer edge of the ring, or cut at least two boards above the flange.")
            {
                Source = "common practice, no source",
            };
        if (jig.Core && core.IsEmpty)
            yield return new("jig-core-no-room", Severity.Note,
                "There is no room for a core inside the part below the blade.",
                "Hold the part from inside with a block cut by hand, or cut higher.")
            {
                Value = plan.Depth,
                Source = "common practice, no source",
            };
    }
}
