using System.Globalization;
using Xunit;

namespace BuckGen.Cli.Tests.Sweeping;

/// <summary>
/// Random command lines and jobs, sizes from 0.1 mm to 10 m: the program does the work or says why it can't, a line for each
/// mistake, and never ends with a fault of its own. A few in the usual run; BUCKGEN_FUZZ=20000 tries as many, and
/// BUCKGEN_FUZZ_FIRST names the first.
/// </summary>
[Trait("Tier", "slow")]
public sealed class SweepTests : Workshop
{
    private const int Usual = 40;

    [Fact]
    public void A_random_command_line_does_its_work_or_is_refused_in_one_line()
    {
        var faults = new List<string>();
        var (first, count, done) = (Number("BUCKGEN_FUZZ_FIRST", 0), Number("BUCKGEN_FUZZ", Usual), 0);
        for (var number = first; number < first + count; number++)
        {
            var (status, fault) = Run(number);
            if (status < 2) done++;
            if (fault is not null) faults.Add($"case {number}: {fault}");
        }

        Assert.True(faults.Count == 0, string.Join("\n", faults));
        // Most of the settings are legal, so that the work is really tried.
        Assert.InRange(done, count / 2, count);
    }

    private (int Status, string? Fault) Run(int number)
    {
        var dice = new RandomSource(number);
        var size = dice.Chance(0.6) ? dice.Size(10, 600) : dice.Size(0.1, 10000);
        Write("drawing.svg", Drawing.CreateRandom(dice, size));
        var args = dice.Chance(0.4) ? WithJob(dice, size) : WithOptions(dice, size);

        var run = Cli.Run(args);

        if (Directory.Exists(At("out"))) Directory.Delete(At("out"), true);
        var refused = run.Status == 2
            && run.Error.TrimEnd('\n').Split('\n').All(l => l.StartsWith("buckgen: ", StringComparison.Ordinal));
        return (run.Status, run.Status is 0 or 1
            || refused ? null : $"status {run.Status}, {run.Error.Trim()} from {string.Join(' ', args)}");
    }

    private string[] WithJob(RandomSource dice, double size)
    {
        var job = Write("job.toml", Job.CreateRandom(dice, size));
        var command = dice.One("make", "make", "check", "form");
        return command == "make" ? [command, job, "--out", At("out"), .. dice.Chance(0.5) ? ["--force"] : Array.Empty<string>()]
            : [command, job];
    }

    private string[] WithOptions(RandomSource dice, double size)
    {
        var settings = Settings.CreateRandom(dice, size);
        return [settings[0], At("drawing.svg"), .. settings[1..], .. settings[0] is "buck" or "jig" or "vents"
            ? ["--out", At("out")] : Array.Empty<string>()];
    }

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), NumberStyles.None, CultureInfo.InvariantCulture,
            out var number) ? number : otherwise;
}
