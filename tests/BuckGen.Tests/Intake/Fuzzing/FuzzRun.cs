using Xunit;

namespace BuckGen.Tests.Intake.Fuzzing;

/// <summary>Lets a reader read many mutants and gathers what it does wrong.</summary>
internal static class FuzzRun
{
    private const int Usual = 1500;
    private const long MaxBytes = 500_000_000;
    private const int MaxReported = 20;
    private static readonly TimeSpan MaxTime = TimeSpan.FromSeconds(2);
    // No reader works for so long, in processor time of the process; one that does hangs, and only the run's end can stop it.
    private static readonly TimeSpan PollInterval = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Hanging = TimeSpan.FromSeconds(30);

    /// <summary>Runs a reader over mutants of a folder of the corpus.</summary>
    /// <param name="folder">dxf or svg.</param>
    /// <param name="read">Reads a mutant and returns a complaint, or null when all is well.</param>
    /// <param name="maxMutants">Most mutants of the usual run.</param>
    /// <param name="bounded">True to hold each to the memory and time of a reader.</param>
    public static void Execute(string folder, Func<Mutant, string?> read, int maxMutants = int.MaxValue, bool bounded = true)
    {
        var (files, settings, wrong) = (CorpusBytes.In(folder), FuzzSettings.Or(Usual), new List<string>());
        Assert.True(files.Count > 50, $"only {files.Count} files");
        var count = settings.Timed ? settings.Count : Math.Min(settings.Count, maxMutants);
        for (var number = settings.First; number < settings.First + count && wrong.Count < MaxReported; number++)
        {
            var mutant = Mutant.Create(files, settings.Seed, number);
            var outcome = Watched(mutant, read);
            // What the runtime does beside the reading counts too, so a slow one gets two further chances.
            for (var chance = 0; bounded && settings.Timed && outcome.Fault is null && outcome.Time > MaxTime
                && chance < 2; chance++)
                outcome = Watched(mutant, read);
            var complaint = outcome.Fault
                ?? (bounded && outcome.Bytes > MaxBytes ? $"took {outcome.Bytes / 1_000_000} MB" : null)
                ?? (bounded && settings.Timed
                    && outcome.Time > MaxTime ? $"took {outcome.Time.TotalSeconds:F1} s of processor time" : null);
            if (complaint is not null) wrong.Add($"{mutant}: {complaint}");
            if (outcome.Hangs) break;
        }

        Assert.True(wrong.Count == 0, string.Join(Environment.NewLine, wrong));
    }

    private static Outcome Watched(Mutant mutant, Func<Mutant, string?> read)
    {
        string? complaint = null;
        var (bytes, time) = (GC.GetTotalAllocatedBytes(), Environment.CpuUsage.TotalTime);
        var worker = new Thread(() =>
        {
            try
            {
                complaint = read(mutant);
            }
            catch (Exception e)
            {
                complaint = e.ToString();
            }
        })
        { IsBackground = true };
        worker.Start();
        while (!worker.Join(PollInterval))
            if (Environment.CpuUsage.TotalTime - time > Hanging)
                return new($"did not end within {Hanging.TotalSeconds} s of processor time", 0, default, true);
        return new(complaint, GC.GetTotalAllocatedBytes() - bytes, Environment.CpuUsage.TotalTime - time, false);
    }

    private sealed record Outcome(string? Fault, long Bytes, TimeSpan Time, bool Hangs);
}
