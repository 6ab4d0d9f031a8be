using BuckGen.Design.Bucks;

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
            MinNeck = table.Length("least-neck", defaults.MinNeck),
            MinDraftMale = table.OptionalAngle("least-draft-male"),
            MinDraftFemale = table.OptionalAngle("least-draft-female"),
            MaxDepthMale = table.OptionalNumber("deepest-male"),
            MaxDepthFemale = table.OptionalNumber("deepest-female"),
            MaxDepthPlugged = table.Number("deepest-plugged", defaults.MaxDepthPlugged),
            MaxDraw = table.Number("largest-draw", defaults.MaxDraw),
            MaxThinning = table.Number("largest-thinning", defaults.MaxThinning),
            MinMeanWall = table.Length("least-mean-wall", defaults.MinMeanWall),
            MinCorner = table.Number("least-corner", defaults.MinCorner),
            MaxStep = table.Number("largest-step", defaults.MaxStep),
            GrainGauge = table.Length("grain-gauge", defaults.GrainGauge),
            MinFrameGap = table.Number("least-frame-gap", defaults.MinFrameGap),
            MinGlueLand = table.Length("least-glue-land", defaults.MinGlueLand),
            MinPanelBridge = table.Number("least-panel-bridge", defaults.MinPanelBridge),
            Silenced = table.TextPairs("silence", "[[\"corner-sharp\", \"the customer wants it so\"]]") is { IsEmpty: false } pairs
                ? [.. pairs.Select(p => new Silence(p.First, p.Second))]
                : defaults.Silenced,
        };
    }
}
