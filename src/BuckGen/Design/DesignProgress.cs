namespace BuckGen.Design;

/// <summary>How far a design has come.</summary>
/// <param name="Step">What is done now, in plain words.</param>
/// <param name="Number">Number of the step, from 1.</param>
/// <param name="Total">How many steps there are.</param>
public readonly record struct DesignProgress(string Step, int Number, int Total)
{
    private static readonly string[] BeforeForming =
    [
        "size the part", "draft the layers", "set the dowels", "look for changes of shape", "place the vents",
        "letter the layers",
    ];

    private static readonly string[] AfterForming = ["make jigs and panel", "check the design"];

    /// <summary>How many steps a design has.</summary>
    /// <param name="withPrediction">True when the wall of the part is predicted.</param>
    internal static int StepCount(bool withPrediction) => BeforeForming.Length + (withPrediction ? 1 : 0) + AfterForming.Length;

    /// <summary>Reports each step.</summary>
    internal static Action Reporter(IProgress<DesignProgress>? progress, bool withPrediction, CancellationToken cancellation)
    {
        string[] steps = [.. BeforeForming, .. withPrediction ? ["form the sheet"] : (string[])[], .. AfterForming];
        var number = 0;
        return () =>
        {
            cancellation.ThrowIfCancellationRequested();
            progress?.Report(new(steps[number], number + 1, steps.Length));
            number++;
        };
    }
}
