using BuckGen.Design.Forming;
using BuckGen.Findings;

namespace BuckGen.Design.Checks;

/// <summary>Is the sheet drawn so far that it may tear, or thinner than was asked for?</summary>
internal sealed class DrawCheck : IDesignCheck
{
    public string Name => "draw";

    public IEnumerable<Finding> Run(DesignView design)
    {
        if (design.Blank is not { } blank) yield break;
        var (limit, film) = (design.Checks.MaxDraw, design.Checks.MinMeanWall);
        if (blank.Ratios.Areal > limit || blank.MeanThickness < film)
            yield return new("may-tear", Severity.Warning,
                FormattableString.Invariant(
                    $"The sheet is drawn to {blank.Ratios.Areal:0.##} times its area: {blank.Gauge:0.##} mm becomes ")
                    + FormattableString.Invariant($"{blank.MeanThickness:0.##} mm on average over ")
                    + $"{Blank.AveragedOver(design.Spec.Kind)}, and less in corners.",
                "Use a thicker sheet, a shallower shape, more draft, or a larger blank round a male buck.")
            {
                Value = blank.Ratios.Areal,
                Limit = limit,
                Source = "mean thickness by areas (SPE Thermoforming Quarterly 24(4), 2005); the limit is common practice, "
                    + "no source",
            };
        if (blank.GaugeForMinWall is { } needed && needed > blank.Gauge)
            yield return new("gauge-too-thin", Severity.Warning,
                FormattableString.Invariant(
                    $"For a mean wall of {design.Sheet!.MinWall:0.##} mm the sheet must be {needed:0.##} mm thick; it is ")
                    + FormattableString.Invariant($"{blank.Gauge:0.##} mm."),
                "Order thicker sheet.")
            {
                Value = blank.Gauge,
                Limit = needed,
                Source = "area method",
            };
        if (blank.PlugWall is { } wall && wall < film)
            yield return new("plug-starves-walls", Severity.Warning,
                FormattableString.Invariant($"The plug carries the floor at full gauge and leaves {wall:0.##} mm for the walls."),
                "Use a smaller plug, so that more of the sheet is left to stretch, a thicker sheet or a shallower shape.")
            {
                Value = wall,
                Limit = film,
                Source = "area balance with a plug (Crawford, Plastics Engineering, 3rd ed., example 4.7); the limit is "
                    + "common practice, no source",
            };
    }
}
