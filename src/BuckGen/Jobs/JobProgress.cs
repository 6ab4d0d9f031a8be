namespace BuckGen.Jobs;

/// <summary>How far a job has come.</summary>
/// <param name="Step">What is done now, in plain words.</param>
/// <param name="Number">Number of the step, from 1.</param>
/// <param name="Total">How many steps there are.</param>
public readonly record struct JobProgress(string Step, int Number, int Total);
