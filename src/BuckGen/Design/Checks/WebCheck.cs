using BuckGen.Findings;
using BuckGen.Geometry.Facing;

namespace BuckGen.Design.Checks;

/// <summary>Do raised parts stand so close that the sheet folds between them?</summary>
internal sealed class WebCheck : IDesignCheck
{
    public string Name => "web";

    public IEnumerable<Finding> Run(DesignView design)
    {
        if (!design.IsMale) yield break;
        var (foot, depth) = (design.Shape.At(design.Shape.Foot), design.Plan.Depth);
        // One part alone has no other beside it.
        if (foot.Islands.Length < 2) yield break;
        var minGap = design.Checks.WebGap * depth;
        var gaps = FacingEdges.Within(foot, minGap)
            .Where(p => p.Width < minGap && !p.ThroughWood && double.IsInfinity(p.Detour)).ToArray();
        if (gaps.Length == 0) yield break;
        var more = gaps.Length > 1 ? FormattableString.Invariant($" and close in {gaps.Length - 1} more places") : "";
        yield return new("web-between", Severity.Warning,
            FormattableString.Invariant($"Parts {depth:0.#} mm high stand {gaps[0].Width:0.##} mm apart at their foot{more}: ")
                + "the sheet folds between them or does not reach the bottom; "
                + FormattableString.Invariant($"{minGap:0.#} mm is the minimum, 1.75 times the height is better."),
            "Move them apart, make them lower, or form them one by one.")
        {
            Place = gaps[0].Middle,
            Height = design.Shape.Foot,
            Value = gaps[0].Width,
            Limit = minGap,
            Source = "guides of resin suppliers (from memory)",
        };
    }
}
