using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Design.Specs;
using BuckGen.Findings;
using BuckGen.Settings;

namespace BuckGen.Output.Reports;

/// <summary>What the design was checked against.</summary>
/// <param name="Limits">The limits, under the words of the job file.</param>
/// <param name="Silenced">Findings that are kept as notes.</param>
public sealed record ChecksReport(ImmutableArray<LimitReport> Limits, ImmutableArray<Silence> Silenced)
{
    internal static ChecksReport Create(BuckSpec spec)
    {
        var (c, isMale) = (spec.Checks, spec.Kind == BuckKind.Male);
        var depth = isMale ? CheckSettings.MaxDepthMale : spec.Former.PlugGap is null ? CheckSettings.MaxDepthFemale
            : CheckSettings.MaxDepthPlugged;
        return new(
            [
                ToLimit(isMale ? CheckSettings.MinDraftMale : CheckSettings.MinDraftFemale, spec.Limits.MinDraft),
                ToLimit(depth, spec.Limits.MaxDepthToWidth),
                ToLimit(CheckSettings.WebGap, c.WebGap),
                ToLimit(CheckSettings.MinNeck, c.MinNeck),
                ToLimit(CheckSettings.MaxDraw, c.MaxDraw),
                ToLimit(CheckSettings.MaxThinning, c.MaxThinning),
                ToLimit(CheckSettings.MinMeanWall, c.MinMeanWall),
                ToLimit(CheckSettings.MinCorner, c.MinCorner),
                ToLimit(CheckSettings.MaxStep, c.MaxStep),
                ToLimit(CheckSettings.GrainGauge, c.GrainGauge),
                ToLimit(CheckSettings.MinFrameGap, c.MinFrameGap),
                ToLimit(CheckSettings.MinGlueLand, c.MinGlueLand),
                ToLimit(CheckSettings.MinPanelBridge, c.MinPanelBridge),
            ],
            c.Silenced);
    }

    private static LimitReport ToLimit(NumberSetting setting, double value) =>
        ToLimit(setting, new Limit(value, value == setting.Value ? setting.Source : "the maker's own limit"));

    private static LimitReport ToLimit(NumberSetting setting, Limit limit) =>
        new(setting.Key, ReportNumber.Round(limit.Value), setting.Unit, limit.Source);
}

/// <summary>One limit.</summary>
/// <param name="Word">Its word in the job file.</param>
/// <param name="Value">The limit.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LimitReport(string Word, double Value, string Unit, string Source);
