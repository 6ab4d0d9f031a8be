using BuckGen.Design.Checks;
using BuckGen.Findings;

namespace BuckGen.Jobs;

/// <summary>Reads the table [checks] of a job file.</summary>
internal static class CheckTable
{
    public static CheckSpec Read(JobTable table) => new()
    {
        WebGap = table.Number(CheckSettings.WebGap),
        MinNeck = table.Number(CheckSettings.MinNeck),
        MinDraftMale = table.Optional(CheckSettings.MinDraftMale),
        MinDraftFemale = table.Optional(CheckSettings.MinDraftFemale),
        MaxDepthMale = table.Optional(CheckSettings.MaxDepthMale),
        MaxDepthFemale = table.Optional(CheckSettings.MaxDepthFemale),
        MaxDepthPlugged = table.Number(CheckSettings.MaxDepthPlugged),
        MaxDraw = table.Number(CheckSettings.MaxDraw),
        MaxThinning = table.Number(CheckSettings.MaxThinning),
        MinMeanWall = table.Number(CheckSettings.MinMeanWall),
        MinCorner = table.Number(CheckSettings.MinCorner),
        MaxStep = table.Number(CheckSettings.MaxStep),
        GrainGauge = table.Number(CheckSettings.GrainGauge),
        MinFrameGap = table.Number(CheckSettings.MinFrameGap),
        MinGlueLand = table.Number(CheckSettings.MinGlueLand),
        MinPanelBridge = table.Number(CheckSettings.MinPanelBridge),
        // Two empty lists are not equal when they are different lists, so the default is kept.
        Silenced = table.TextPairs(CheckSettings.Silence) is { IsEmpty: false } pairs
            ? [.. pairs.Select(p => new Silence(p.First, p.Second))]
            : new CheckSpec().Silenced,
    };
}
