using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;

namespace BuckGen.Output.Reports;

/// <summary>What the design was checked against.</summary>
/// <param name="Limits">The limits, under the words of the job file.</param>
/// <param name="Silenced">Findings that are kept as notes.</param>
public sealed record ChecksReport(ImmutableArray<LimitReport> Limits, ImmutableArray<Silence> Silenced)
{
    private const string Practice = "common practice, no source", Own = "the maker's own limit";

    internal static ChecksReport Of(BuckSpec spec)
    {
        var (c, usual) = (spec.Checks, new CheckSpec());
        return new(
            [
                Of(spec.Kind == BuckKind.Male ? "least-draft-male" : "least-draft-female", PlasticLimits.LeastDraft(spec), "degrees"),
                Of(spec.Kind == BuckKind.Male ? "deepest-male" : spec.Former.PlugGap is null ? "deepest-female" : "deepest-plugged", PlasticLimits.Deepest(spec), "times the width"),
                Of("web-gap", c.WebGap, usual.WebGap, "times the depth", "guides of resin suppliers (from memory)"),
                Of("least-neck", c.LeastNeck, usual.LeastNeck, "mm", Practice),
                Of("largest-draw", c.LargestDraw, usual.LargestDraw, "times the area", Practice),
                Of("largest-thinning", c.LargestThinning, usual.LargestThinning, "times as thin", Practice),
                Of("least-mean-wall", c.LeastMeanWall, usual.LeastMeanWall, "mm", Practice),
                Of("least-corner", c.LeastCorner, usual.LeastCorner, "times the gauge", "design guidelines of a former"),
                Of("largest-step", c.LargestStep, usual.LargestStep, "times the formed thickness", Practice),
                Of("grain-gauge", c.GrainGauge, usual.GrainGauge, "mm", Practice),
                Of("least-frame-gap", c.LeastFrameGap, usual.LeastFrameGap, "times the depth", Practice),
                Of("least-glue-land", c.LeastGlueLand, usual.LeastGlueLand, "mm", Practice),
                Of("least-panel-bridge", c.LeastPanelBridge, usual.LeastPanelBridge, "times the thickness", Practice),
            ],
            c.Silenced);
    }

    private static LimitReport Of(string word, double value, double usual, string unit, string source) => new(word, Rounded.Of(value), unit, value == usual ? source : Own);

    private static LimitReport Of(string word, Limit limit, string unit) => new(word, Rounded.Of(limit.Value), unit, limit.Source);
}

/// <summary>One limit.</summary>
/// <param name="Word">Its word in the job file.</param>
/// <param name="Value">The limit.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LimitReport(string Word, double Value, string Unit, string Source);
