using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Specs;
using BuckGen.Findings;

namespace BuckGen.Output.Reports;

/// <summary>What the design was checked against.</summary>
/// <param name="Limits">The limits, under the words of the job file.</param>
/// <param name="Silenced">Findings that are kept as notes.</param>
public sealed record ChecksReport(ImmutableArray<LimitReport> Limits, ImmutableArray<Silence> Silenced)
{
    private const string Practice = "common practice, no source", MakersLimit = "the maker's own limit";

    internal static ChecksReport Create(BuckSpec spec)
    {
        var (c, usual) = (spec.Checks, new CheckSpec());
        return new(
            [
                ToLimit(spec.Kind == BuckKind.Male ? "min-draft-male" : "min-draft-female", spec.Limits.MinDraft, "degrees"),
                ToLimit(spec.Kind == BuckKind.Male ? "max-depth-male" : spec.Former.PlugGap is null ? "max-depth-female" : "max-depth-plugged", spec.Limits.MaxDepthToWidth, "times the width"),
                ToLimit("web-gap", c.WebGap, usual.WebGap, "times the depth", "guides of resin suppliers (from memory)"),
                ToLimit("min-neck", c.MinNeck, usual.MinNeck, "mm", Practice),
                ToLimit("max-draw", c.MaxDraw, usual.MaxDraw, "times the area", Practice),
                ToLimit("max-thinning", c.MaxThinning, usual.MaxThinning, "times as thin", Practice),
                ToLimit("min-mean-wall", c.MinMeanWall, usual.MinMeanWall, "mm", Practice),
                ToLimit("min-corner", c.MinCorner, usual.MinCorner, "times the gauge", "design guidelines of a former"),
                ToLimit("max-step", c.MaxStep, usual.MaxStep, "times the formed thickness", Practice),
                ToLimit("grain-gauge", c.GrainGauge, usual.GrainGauge, "mm", Practice),
                ToLimit("min-frame-gap", c.MinFrameGap, usual.MinFrameGap, "times the depth", Practice),
                ToLimit("min-glue-land", c.MinGlueLand, usual.MinGlueLand, "mm", Practice),
                ToLimit("min-panel-bridge", c.MinPanelBridge, usual.MinPanelBridge, "times the thickness", Practice),
            ],
            c.Silenced);
    }

    private static LimitReport ToLimit(string word, double value, double usual, string unit, string source) => new(word, ReportNumber.Round(value), unit, value == usual ? source : MakersLimit);

    private static LimitReport ToLimit(string word, Limit limit, string unit) => new(word, ReportNumber.Round(limit.Value), unit, limit.Source);
}

/// <summary>One limit.</summary>
/// <param name="Word">Its word in the job file.</param>
/// <param name="Value">The limit.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LimitReport(string Word, double Value, string Unit, string Source);
