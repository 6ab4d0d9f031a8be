using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Settings;

namespace BuckGen.Design.Checks;

/// <summary>The limits that a design is checked against, and the findings that its maker has accepted.</summary>
public sealed record CheckSpec
{
    /// <summary>
    /// Least gap between raised parts, times the depth. One depth at least, better 1.75 (guides of resin suppliers, from memory).
    /// </summary>
    public double WebGap { get; init; } = 1;

    /// <summary>
    /// Narrowest neck of wood, mm. Details under 1 mm are fragile, a laser cutter's advice; 3 mm is common practice (no source).
    /// </summary>
    public double MinNeck { get; init; } = 3;

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
    public double MaxDepthPlugged { get; init; } = 1.5;

    /// <summary>Greatest formed area over flat area before tearing is near. Common practice, no source.</summary>
    public double MaxDraw { get; init; } = 3;

    /// <summary>Gauge over the thinnest place of the predicted part before tearing is near. Common practice, no source.</summary>
    public double MaxThinning { get; init; } = 6;

    /// <summary>Thinnest mean wall that still holds a shape, mm. Common practice, no source.</summary>
    public double MinMeanWall { get; init; } = 0.2;

    /// <summary>
    /// Least radius of a corner, times the gauge. Source: design guidelines of a former, radius at least the starting thickness.
    /// </summary>
    public double MinCorner { get; init; } = 1;

    /// <summary>
    /// Widest step between layers that does not show, times the mean formed thickness. Common practice, no source.
    /// </summary>
    public double MaxStep { get; init; } = 0.5;

    /// <summary>Gauge up to which the grain of plywood shows, mm. Common practice, no source.</summary>
    public double GrainGauge { get; init; } = 1;

    /// <summary>
    /// Least gap between buck and frame, times the depth of a male buck; never under 25 mm. Common practice, no source.
    /// </summary>
    public double MinFrameGap { get; init; } = 0.5;

    /// <summary>Narrowest overlap of flange and panel that takes glue, mm. Common practice, no source.</summary>
    public double MinGlueLand { get; init; } = 5;

    /// <summary>Narrowest wood between two openings of a panel, times its thickness. Common practice, no source.</summary>
    public double MinPanelBridge { get; init; } = 1;

    /// <summary>Findings that are kept as notes, each with the maker's reason.</summary>
    public ImmutableArray<Silence> Silenced { get; init; } = [];

    internal void Validate()
    {
        SpecRange.Require(WebGap is >= 0 and <= 10, "least gap against webs", WebGap, " times the depth", "from 0 to 10");
        SpecRange.Require(MinNeck is >= 0 and <= 100, "narrowest neck", MinNeck, " mm", "from 0 to 100 mm");
        Optional(MinDraftMale, 0, 45, "least draft of a male buck", " degrees");
        Optional(MinDraftFemale, 0, 45, "least draft of a cavity", " degrees");
        Optional(MaxDepthFemale, 0.01, 10, "greatest depth of a cavity over its width", "");
        Optional(MaxDepthMale, 0.01, 10, "greatest height of a buck over its width", "");
        SpecRange.Require(MaxDepthPlugged is >= 0.01 and <= 10, "greatest depth with a plug over the width", MaxDepthPlugged, "", "from 0.01 to 10");
        SpecRange.Require(MaxDraw is >= 1 and <= 20, "greatest draw ratio", MaxDraw, "", "from 1 to 20");
        SpecRange.Require(MaxThinning is >= 1 and <= 100, "greatest thinning", MaxThinning, "", "from 1 to 100");
        SpecRange.Require(MinMeanWall is >= 0 and <= 25, "thinnest mean wall", MinMeanWall, " mm", "from 0 to 25 mm");
        SpecRange.Require(MinCorner is >= 0 and <= 20, "least radius of a corner", MinCorner, " times the gauge", "from 0 to 20");
        SpecRange.Require(MaxStep is >= 0 and <= 20, "widest step", MaxStep, " times the formed thickness", "from 0 to 20");
        SpecRange.Require(GrainGauge is >= 0 and <= 25, "gauge up to which grain shows", GrainGauge, " mm", "from 0 to 25 mm");
        SpecRange.Require(MinFrameGap is >= 0 and <= 10, "least gap to the frame", MinFrameGap, " times the depth", "from 0 to 10");
        SpecRange.Require(MinGlueLand is >= 0 and <= 100, "narrowest glue land", MinGlueLand, " mm", "from 0 to 100 mm");
        SpecRange.Require(MinPanelBridge is >= 0 and <= 20, "narrowest bridge of a panel", MinPanelBridge, " times its thickness", "from 0 to 20");
        foreach (var silence in Silenced)
            if (string.IsNullOrWhiteSpace(silence.Id) || string.IsNullOrWhiteSpace(silence.Reason))
                throw new SpecException("A silenced finding needs its id and a reason.");
    }

    private static void Optional(double? value, double min, double max, string what, string unit)
    {
        if (value is { } v) SpecRange.Require(v >= min && v <= max, what, v, unit, FormattableString.Invariant($"from {min} to {max}{unit}"));
    }
}
