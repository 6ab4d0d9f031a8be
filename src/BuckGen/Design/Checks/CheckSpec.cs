using System.Collections.Immutable;
using BuckGen.Findings;
using BuckGen.Settings;

namespace BuckGen.Design.Checks;

/// <summary>The limits that a design is checked against, and the findings that its maker has accepted.</summary>
public sealed record CheckSpec
{
    /// <summary>
    /// Least gap between raised parts, times the depth. One depth at least, better 1.75 (guides of resin suppliers, from memory).
    /// </summary>
    public double WebGap { get; init; } = CheckSettings.WebGap.Value;

    /// <summary>
    /// Narrowest neck of wood, mm. Details under 1 mm are fragile, a laser cutter's advice; 3 mm is common practice (no source).
    /// </summary>
    public double MinNeck { get; init; } = CheckSettings.MinNeck.Value;

    /// <summary>
    /// Least draft of a male buck, degrees; null for the plastic's own in the catalog, or 3 (a former's design guidelines).
    /// Published minima run from 1.5 to 6.
    /// </summary>
    public double? MinDraftMale { get; init; }

    /// <summary>
    /// Least draft of a cavity, degrees; null for the plastic's own in the catalog, or 2 (a former's guidelines). Published
    /// minima run from 0 (SPE Thermoforming Quarterly 25(1), 2006) to 2.
    /// </summary>
    public double? MinDraftFemale { get; init; }

    /// <summary>
    /// Greatest depth of a cavity over its width; null for the plastic's own in the catalog, or 0.75 (a former's advice: 75 per
    /// cent of the smaller dimension).
    /// </summary>
    public double? MaxDepthFemale { get; init; }

    /// <summary>
    /// Greatest height of a male buck over its width; null for the plastic's own in the catalog, or 1 (Throne, from memory).
    /// </summary>
    public double? MaxDepthMale { get; init; }

    /// <summary>
    /// Greatest depth of a cavity over its width when a plug pushes the sheet in. A sheet former's guide to wall thickness
    /// recommends a plug from 1 to 1.5 and reports 65 to 80 per cent of thinning at 1.5.
    /// </summary>
    public double MaxDepthPlugged { get; init; } = CheckSettings.MaxDepthPlugged.Value;

    /// <summary>Greatest formed area over flat area before tearing is near. Common practice, no source.</summary>
    public double MaxDraw { get; init; } = CheckSettings.MaxDraw.Value;

    /// <summary>Gauge over the thinnest place of the predicted part before tearing is near. Common practice, no source.</summary>
    public double MaxThinning { get; init; } = CheckSettings.MaxThinning.Value;

    /// <summary>Thinnest mean wall that still holds a shape, mm. Common practice, no source.</summary>
    public double MinMeanWall { get; init; } = CheckSettings.MinMeanWall.Value;

    /// <summary>
    /// Least radius of a corner, times the gauge. Source: design guidelines of a former, radius at least the starting thickness.
    /// </summary>
    public double MinCorner { get; init; } = CheckSettings.MinCorner.Value;

    /// <summary>
    /// Widest step between layers that does not show, times the mean formed thickness. Common practice, no source.
    /// </summary>
    public double MaxStep { get; init; } = CheckSettings.MaxStep.Value;

    /// <summary>Gauge up to which the grain of plywood shows, mm. Common practice, no source.</summary>
    public double GrainGauge { get; init; } = CheckSettings.GrainGauge.Value;

    /// <summary>
    /// Least gap between buck and frame, times the depth of a male buck; never under 25 mm. Common practice, no source.
    /// </summary>
    public double MinFrameGap { get; init; } = CheckSettings.MinFrameGap.Value;

    /// <summary>Narrowest overlap of flange and panel that takes glue, mm. Common practice, no source.</summary>
    public double MinGlueLand { get; init; } = CheckSettings.MinGlueLand.Value;

    /// <summary>Narrowest wood between two openings of a panel, times its thickness. Common practice, no source.</summary>
    public double MinPanelBridge { get; init; } = CheckSettings.MinPanelBridge.Value;

    /// <summary>Findings that are kept as notes, each with the maker's reason.</summary>
    public ImmutableArray<Silence> Silenced { get; init; } = [];

    internal void Validate()
    {
        CheckSettings.WebGap.Require(WebGap);
        CheckSettings.MinNeck.Require(MinNeck);
        CheckSettings.MinDraftMale.Require(MinDraftMale);
        CheckSettings.MinDraftFemale.Require(MinDraftFemale);
        CheckSettings.MaxDepthFemale.Require(MaxDepthFemale);
        CheckSettings.MaxDepthMale.Require(MaxDepthMale);
        CheckSettings.MaxDepthPlugged.Require(MaxDepthPlugged);
        CheckSettings.MaxDraw.Require(MaxDraw);
        CheckSettings.MaxThinning.Require(MaxThinning);
        CheckSettings.MinMeanWall.Require(MinMeanWall);
        CheckSettings.MinCorner.Require(MinCorner);
        CheckSettings.MaxStep.Require(MaxStep);
        CheckSettings.GrainGauge.Require(GrainGauge);
        CheckSettings.MinFrameGap.Require(MinFrameGap);
        CheckSettings.MinGlueLand.Require(MinGlueLand);
        CheckSettings.MinPanelBridge.Require(MinPanelBridge);
        foreach (var silence in Silenced)
            if (string.IsNullOrWhiteSpace(silence.Id) || string.IsNullOrWhiteSpace(silence.Reason))
                throw new SpecException("A silenced finding needs its id and a reason.");
    }
}
