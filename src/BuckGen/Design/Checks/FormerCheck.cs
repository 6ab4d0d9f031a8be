using BuckGen.Design.Forming;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>Does it fit the former?</summary>
internal sealed class FormerCheck : IDesignCheck
{
    public string Name => "former";

    /// <summary>Rounding of a gap, mm.</summary>
    private const double Rounding = 1e-6;

    public IEnumerable<Finding> Run(DesignView design)
    {
        if (design.Former.Travel is { } travel && design.Height > travel)
            yield return new("taller-than-travel", Severity.Error,
                FormattableString.Invariant(
                    $"The buck is {design.Height:0.#} mm high with its base; the former lifts it {travel:0.#} mm."),
                "Make the part shallower, or leave out the base or the plenum.")
            {
                Height = design.Height,
                Value = design.Height,
                Limit = travel,
            };
        if (design.Blank is not { } blank) yield break;
        // What drapes needs sheet to drape from; in a cavity only the seal needs its land.
        var minGap = design.IsMale ? Math.Max(Blank.MinGap, design.Checks.MinFrameGap * design.Plan.Depth) : Blank.MinGap;
        if (blank.Gap < 0)
            yield return new("frame-too-small", Severity.Error,
                FormattableString.Invariant(
                    $"The part is {-2 * blank.Gap:0.#} mm larger than the frame of {blank.Opening.Width:0.#} x ")
                    + FormattableString.Invariant($"{blank.Opening.Height:0.#} mm."),
                "Use a larger former, or make the part smaller.")
            {
                Value = blank.Gap,
                Limit = 0,
            };
        else if (blank.Gap < minGap - Rounding)
            yield return new("frame-tight", Severity.Warning,
                FormattableString.Invariant(
                    $"Only {blank.Gap:0.#} mm lie between buck and frame; under {minGap:0.#} mm the walls thin, and ")
                    + FormattableString.Invariant(
                        $"{Math.Max(Blank.MinGap, design.IsMale ? design.Plan.Depth : 0):0.#} mm is comfortable."),
                "Use a larger frame, a lower buck, or turn it.")
            {
                Value = blank.Gap,
                Limit = minGap,
                Source = "Takahashi and Bando, Dental Traumatology 2018 (measured); the limit is common practice, no source",
            };
    }
}
