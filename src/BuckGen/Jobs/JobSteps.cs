using BuckGen.Design;

namespace BuckGen.Jobs;

/// <summary>Turns the reports of the steps of a job into one count: reading, designing, laying out, writing.</summary>
/// <param name="progress">Receives the steps; null when no one asks.</param>
/// <param name="withPrediction">True when the wall of the part is predicted.</param>
/// <param name="cancellation">Stops the work.</param>
internal sealed class JobSteps(IProgress<JobProgress>? progress, bool withPrediction, CancellationToken cancellation)
    : IProgress<DesignProgress>, IProgress<string>
{
    private const int BeforeDesign = 1;
    private const int AfterDesign = 2;

    private int Total => BeforeDesign + DesignProgress.StepCount(withPrediction) + AfterDesign;

    public void Read(string drawing) => Report($"read {drawing}", BeforeDesign);

    public void LayOut() => Report("lay out the boards", Total - 1);

    /// <inheritdoc/>
    public void Report(DesignProgress value) => Report(value.Step, BeforeDesign + value.Number);

    /// <inheritdoc/>
    public void Report(string value) => Report($"make {value}", Total);

    private void Report(string step, int number)
    {
        cancellation.ThrowIfCancellationRequested();
        progress?.Report(new(step, number, Total));
    }
}
