using BuckGen.Jobs;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>The library's one call gives what the command gives, byte for byte.</summary>
public sealed class JobRunnerTests : Workshop
{
    /// <summary>The box with its predicted wall, the sign without: that takes most of the time and is the same in both.</summary>
    [Theory]
    [InlineData("boathouse-sign", false)]
    [InlineData("specimen-box", true)]
    public void A_job_is_the_same_from_the_library(string example, bool predicted)
    {
        var folder = Path.Combine(Repository.Root, "examples", example);
        foreach (var file in Directory.GetFiles(folder)) File.Copy(file, At(Path.GetFileName(file)));
        var job = File.ReadAllText(At("job.toml"));
        if (!predicted) Write("job.toml", job += "\n[forming]\npredict = false\n");
        var steps = new List<JobProgress>();

        Cli.Run("make", At("job.toml"), "--out", At("made")).AssertDone();
        var result = JobRunner.Run(job, "job.toml", new JobFolder(Folder), progress: new Steps(steps));

        Assert.Equal(Present("made"), result.Files.Select(f => f.Path).Order(StringComparer.Ordinal));
        Assert.All(result.Files, f => Assert.Equal(File.ReadAllBytes(At($"made/{f.Path}")), f.Content));
        Assert.Equal(Enumerable.Range(1, steps[0].Total), steps.Select(s => s.Number).Distinct());
        Assert.Equal(predicted, steps.Exists(s => s.Step == "form the sheet"));
    }

    [Fact]
    public void A_file_that_the_job_names_and_that_is_missing_is_named()
    {
        var missing = Assert.Throws<JobFileException>(() => JobRunner.Run(PlateJob, "job.toml", new JobFolder(At("."))));

        Assert.Contains("plate.svg does not exist", missing.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_is_stopped_at_every_step()
    {
        Write("plate.svg", Plate);
        var steps = new List<JobProgress>();
        JobRunner.Run(PlateJob, "job.toml", new JobFolder(At(".")), progress: new Steps(steps));
        Assert.InRange(steps.Count, 10, 100);
        for (var step = 0; step < steps.Count; step++)
        {
            using var source = new CancellationTokenSource();
            var seen = 0;
            Assert.ThrowsAny<OperationCanceledException>(() => JobRunner.Run(
                PlateJob, "job.toml", new JobFolder(At(".")),
                progress: new Steps([], () => { if (seen++ == step) source.Cancel(); }), cancellation: source.Token));
        }
    }

    private sealed class Steps(List<JobProgress> steps, Action? next = null) : IProgress<JobProgress>
    {
        public void Report(JobProgress value)
        {
            steps.Add(value);
            next?.Invoke();
        }
    }
}
