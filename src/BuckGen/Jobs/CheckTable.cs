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
            LeastNeck = table.Length("least-neck", defaults.LeastNeck),
            LeastDraftMale = table.OptionalAngle("least-draft-male"),
            LeastDraftFemale = table.OptionalAngle("least-draft-female"),
            DeepestMale = table.OptionalNumber("deepest-male"),
            DeepestFemale = table.OptionalNumber("deepest-female"),
            DeepestPlugged = table.Number("deepest-plugged", defaults.DeepestPlugged),
            LargestDraw = table.Number("largest-draw", defaults.LargestDraw),
            LargestThinning = table.Number("largest-thinning", defaults.LargestThinning),
            LeastMeanWall = table.Length("least-mean-wall", defaults.LeastMeanWall),
            LeastCorner = table.Number("least-corner", defaults.LeastCorner),
            LargestStep = table.Number("largest-step", defaults.LargestStep),
            GrainGauge = table.Length("grain-gauge", defaults.GrainGauge),
            LeastFrameGap = table.Number("least-frame-gap", defaults.LeastFrameGap),
            LeastGlueLand = table.Length("least-glue-land", defaults.LeastGlueLand),
            LeastPanelBridge = table.Number("least-panel-bridge", defaults.LeastPanelBridge),
            Silenced = table.TextPairs("silence", "[[\"corner-sharp\", \"the customer wants it so\"]]") is { IsEmpty: false } pairs
                ? [.. pairs.Select(p => new Silence(p.First, p.Second))]
                : defaults.Silenced,
        };
    }
}
