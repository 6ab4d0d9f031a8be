using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>Every command that designs something can be stopped, and then leaves nothing behind.</summary>
public sealed class StoppedTests : Workshop
{
    [Theory]
    [InlineData("buck")]
    [InlineData("vents")]
    [InlineData("jig")]
    [InlineData("blank")]
    [InlineData("form")]
    [InlineData("check")]
    public void A_command_that_is_stopped_says_so_and_writes_nothing(string command)
    {
        string[] folder = command is "buck" or "vents" or "jig" ? ["--out", At("out")] : [];
        AssertStopped([command, Write("plate.svg", Plate), "--depth", "24", "--stock", "12", "--gauge", "1mm", .. folder]);
    }

    [Fact]
    public void A_job_that_is_stopped_says_so_and_writes_nothing()
    {
        Write("plate.svg", Plate);
        Cli.Run("new", At("job.toml"), "--outline", "plate.svg").AssertDone();
        AssertStopped(["make", At("job.toml"), "--out", At("out")]);
    }

    private void AssertStopped(string[] arguments)
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        using var error = new StringWriter { NewLine = "\n" };

        Assert.Equal(2, CommandLine.Run(arguments, new(TextWriter.Null, error), stopped.Token));
        Assert.Equal("buckgen: stopped; the last complete result is untouched.\n", error.ToString());
        Assert.Empty(Present("out"));
    }
}
