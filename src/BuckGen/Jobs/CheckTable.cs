using BuckGen.Bucks;

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
            LeastDraftMale = table.Angle("least-draft-male", defaults.LeastDraftMale),
            LeastDraftFemale = table.Angle("least-draft-female", defaults.LeastDraftFemale),
            DeepestMale = table.Number("deepest-male", defaults.DeepestMale),
            DeepestFemale = table.Number("deepest-female", defaults.DeepestFemale),
            LargestDraw = table.Number("largest-draw", defaults.LargestDraw),
            Silenced = table.TextPairs("silence", "[[\"corner-sharp\", \"the customer wants it so\"]]") is { IsEmpty: false } pairs
                ? [.. pairs.Select(p => new Silence(p.First, p.Second))]
                : defaults.Silenced,
        };
    }
}
