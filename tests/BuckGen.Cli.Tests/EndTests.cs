using System.Diagnostics;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>How the program ends: killed or asked to stop. Real processes, since only they are killed.</summary>
[Trait("Tier", "slow")]
public sealed class EndTests : ShellWorkshop
{
    private const int Kill = 9, Terminate = 15, Interrupt = 2;

    /// <summary>A job whose files take a while to write.</summary>
    private const string ManyFiles = """
        [outline]
        file = "plate.svg"
        [buck]
        depth = "60mm"
        [output]
        svg = true
        [[stock]]
        name = "MDF 3"
        thickness = "3mm"
        """;

    [Theory]
    [InlineData(Terminate)]
    [InlineData(Interrupt)]
    public void When_stopped_it_says_so_in_one_line_and_leaves_the_last_result(int signal)
    {
        var before = Old();

        using var run = StartAndSignalWhileWriting(signal);
        var error = run.StandardError.ReadToEnd();
        run.WaitForExit();

        // It may have been past the point where it can be stopped.
        if (run.ExitCode == 0) return;
        Assert.Equal((2, "buckgen: stopped; the last complete result is untouched.\n"), (run.ExitCode, error));
        Assert.Equal(before, Present("out"));
        Assert.Equal(["job.toml", "out", "plate.svg"], Directory.GetFileSystemEntries(Folder).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void Killed_it_leaves_a_whole_result_and_the_next_run_clears_up()
    {
        var old = Old();

        using var run = StartAndSignalWhileWriting(Kill);
        run.WaitForExit();

        var found = Present("out");
        if (!found.Contains("layers/layer-20.dxf")) Assert.Equal(old, found);
        Assert.Equal(0, Cli.Run("make", At("job.toml"), "--out", At("out")).Status);
        Assert.Contains("layers/layer-20.svg", Present("out"));
        Assert.Equal(["job.toml", "out", "plate.svg"], Directory.GetFileSystemEntries(Folder).Select(Path.GetFileName).Order());
    }

    private string[] Old()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "There are no such signals.");
        Write("plate.svg", Plate);
        Write("job.toml", ManyFiles);
        Cli.Run("buck", At("plate.svg"), "--depth", "3", "--stock", "3", "--out", At("out")).AssertDone();
        return Present("out");
    }

    /// <summary>Starts the job into the folder and sends a signal as soon as something new lies beside that.</summary>
    private Process StartAndSignalWhileWriting(int signal)
    {
        var run = Start("/bin/sh", $"exec {Program} make job.toml --out out");
        run.OutputDataReceived += (_, _) => { };
        run.BeginOutputReadLine();
        while (!run.HasExited && Directory.GetFileSystemEntries(Folder).Length == 3) Thread.Yield();
        Process.Start("kill", [$"-{signal}", $"{run.Id}"]).WaitForExit();
        return run;
    }
}
