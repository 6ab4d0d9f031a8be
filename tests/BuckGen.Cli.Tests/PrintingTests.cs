using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>Real processes whose words cannot be printed, or that no one reads.</summary>
[Trait("Tier", "slow")]
public sealed class PrintingTests : ShellWorkshop
{
    [Theory]
    [InlineData("> /dev/full", "")]
    [InlineData("> /dev/full", "--json")]
    [InlineData(">&-", "")]
    [InlineData(">&-", "--json")]
    public void Files_that_are_written_are_reported_where_printing_fails(string redirection, string option)
    {
        SkipWithoutShell();
        Write("plate.svg", Plate);

        var (status, error) = Shell($"{Program} buck plate.svg --depth 24 --stock 12 --out out {option} {redirection}");

        Assert.Equal(0, status);
        Assert.StartsWith("buckgen: wrote 6 files to out. The result could not be printed (", error);
        Assert.Equal(1, error.Count(c => c == '\n'));
        Assert.Contains("summary.json", Present("out"));
    }

    [Theory]
    [InlineData("catalog > /dev/full")]
    [InlineData("catalog --json >&-")]
    [InlineData("--help > /dev/full")]
    public void An_answer_that_is_all_there_is_and_can_not_be_printed_is_a_failure(string command)
    {
        SkipWithoutShell();

        var (status, error) = Shell($"{Program} {command}");

        Assert.Equal(2, status);
        Assert.StartsWith("buckgen: The result could not be printed (", error);
        Assert.Equal(1, error.Count(c => c == '\n'));
    }

    [Theory]
    [InlineData("| head -c 0")]
    [InlineData("2>&-")]
    [InlineData("2> /dev/full")]
    [InlineData("2> /dev/full > /dev/full")]
    public void Progress_may_be_left_unread(string redirection)
    {
        SkipWithoutShell();
        Write("plate.svg", Plate);

        var (status, error) = Shell($"set -o pipefail; {Program} buck plate.svg --depth 24 --stock 12 --out out {redirection}");

        Assert.Equal((0, ""), (status, error));
        Assert.Contains("summary.json", Present("out"));
    }

    private static void SkipWithoutShell() =>
        Assert.SkipUnless(File.Exists("/dev/full") && File.Exists("/bin/bash"), "It takes Linux and bash.");

    private (int Status, string Error) Shell(string command)
    {
        using var shell = Start("/bin/bash", command);
        var output = shell.StandardOutput.ReadToEndAsync();
        var error = shell.StandardError.ReadToEnd();
        shell.WaitForExit();
        output.Wait();
        return (shell.ExitCode, error);
    }
}
