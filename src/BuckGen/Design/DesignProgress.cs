namespace BuckGen.Design;

/// <summary>How far a design has come.</summary>
/// <param name="Step">What is done now, in plain words.</param>
/// <param name="Number">Number of the step, from 1.</param>
/// <param name="Total">How many steps there are.</param>
public readonly record struct DesignProgress(string Step, int Number, int Total)
{
    private static readonly string[] Steps = ["size the part", "draft the layers", "set the dowels", "look for changes of shape", "place the vents", "letter the layers", "make jigs and panel", "check the design"];

    /// <summary>Reports each step.</summary>
    internal static Action Reporter(IProgress<DesignProgress>? progress, CancellationToken cancellation)
    {
        var number = 0;
        return () =>
        {
            cancellation.ThrowIfCancellationRequested();
            progress?.Report(new(Steps[number], number + 1, Steps.Length));
            number++;
        };
    }
}
