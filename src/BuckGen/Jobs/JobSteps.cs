using BuckGen.Design;

namespace BuckGen.Jobs;

/// <summary>Turns the reports of the steps of a job into one count: reading, designing, laying out, writing.</summary>
/// <param name="progress">Receives the steps; null when no one asks.</param>
/// <param name="withPrediction">True when the wall of the part is predicted.</param>
/// <param name="withLid">True when a lid follows the part.</param>
/// <param name="cancellation">Stops the work.</param>
internal sealed class JobSteps(
    IProgress<JobProgress>? progress, bool withPrediction, bool withLid, CancellationToken cancellation)
    : IProgress<DesignProgress>, IProgress<string>
{
    private const int BeforeDesign = 1;
    private const int AfterDesign = 2;

    /// <summary>Steps that were done before the first of these: those of the part, when the lid is made.</summary>
    private int Done { get; init; }

    private int OfPart => BeforeDesign + DesignProgress.StepCount(withPrediction) + AfterDesign;

    private int Total => withLid ? OfPart + DesignProgress.StepCount(withPrediction) + AfterDesign : OfPart;

    /// <summary>The steps of the lid, which follow those of the part.</summary>
    public JobSteps ForLid() => new(progress, withPrediction, withLid, cancellation) { Done = OfPart - BeforeDesign };

    public void Read(string drawing) => Report($"read {drawing}", BeforeDesign);

    public void LayOut() => Report("lay out the boards", OfPart - 1);

    /// <inheritdoc/>
    public void Report(DesignProgress value) => Report(value.Step, BeforeDesign + value.Number);

    /// <inheritdoc/>
    public void Report(string value) => Report($"make {value}", OfPart);

    private void Report(string step, int number)
    {
        cancellation.ThrowIfCancellationRequested();
        progress?.Report(new(Done == 0 ? step : $"lid: {step}", Done + number, Total));
    }
}
