using BuckGen.Design.Checks;
using BuckGen.Findings;

namespace BuckGen.Jobs;

/// <summary>Reads the table [checks] of a job file.</summary>
internal static class CheckTable
{
    public static CheckSpec Read(JobTable table)
    {
        var defaults = new CheckSpec();
        return new()
        {
            WebGap = table.Number("web-gap", defaults.WebGap),
            MinNeck = table.Length("min-neck", defaults.MinNeck),
            MinDraftMale = table.OptionalAngle("min-draft-male"),
            MinDraftFemale = table.OptionalAngle("min-draft-female"),
            MaxDepthMale = table.OptionalNumber("max-depth-male"),
            MaxDepthFemale = table.OptionalNumber("max-depth-female"),
            MaxDepthPlugged = table.Number("max-depth-plugged", defaults.MaxDepthPlugged),
            MaxDraw = table.Number("max-draw", defaults.MaxDraw),
            MaxThinning = table.Number("max-thinning", defaults.MaxThinning),
            MinMeanWall = table.Length("min-mean-wall", defaults.MinMeanWall),
            MinCorner = table.Number("min-corner", defaults.MinCorner),
            MaxStep = table.Number("max-step", defaults.MaxStep),
            GrainGauge = table.Length("grain-gauge", defaults.GrainGauge),
            MinFrameGap = table.Number("min-frame-gap", defaults.MinFrameGap),
            MinGlueLand = table.Length("min-glue-land", defaults.MinGlueLand),
            MinPanelBridge = table.Number("min-panel-bridge", defaults.MinPanelBridge),
            Silenced = table.TextPairs("silence", "[[\"corner-sharp\", \"the customer wants it so\"]]") is { IsEmpty: false } pairs
                ? [.. pairs.Select(p => new Silence(p.First, p.Second))]
                : defaults.Silenced,
        };
    }
}
