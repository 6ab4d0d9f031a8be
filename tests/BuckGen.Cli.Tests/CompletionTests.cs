using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>What the program offers for a half-typed line, and the scripts that let a shell ask.</summary>
public class CompletionTests
{
    [Theory]
    [InlineData("buckgen ma", "make")]
    [InlineData("/usr/local/bin/buckgen ma", "make")]
    [InlineData("buckgen buck sign.svg --ki", "--kind")]
    [InlineData("buckgen buck sign.svg --kind ", "female male")]
    [InlineData("buckgen buck sign.svg --corners m", "mitre")]
    [InlineData("buckgen buck 'my sign.svg' --outline-at ", "base face")]
    [InlineData("buckgen inspect sign.svg --units ", "cm ft in m mm")]
    [InlineData("buckgen buck sign.svg --plastic pet", "petg")]
    [InlineData("buckgen buck sign.svg --vents ", "given grid walls")]
    [InlineData("buckgen completion b", "bash")]
    public void A_half_typed_line_is_offered_what_may_follow(string line, string words) =>
        Assert.Equal(words, string.Join(' ', Offered(line)));

    [Fact]
    public void All_commands_are_offered_and_none_beside_them() =>
        Assert.Equal(
            ["blank", "buck", "catalog", "check", "completion", "form", "inspect", "jig", "make", "new", "plugins", "vents"],
            Offered("buckgen ").Where(w => w[0] is >= 'a' and <= 'z'));

    [Theory]
    [InlineData("catalog ")]
    [InlineData("buck sign.svg --stock ")]
    [InlineData("buck sign.svg --base ")]
    public void Stocks_are_offered_by_their_words_in_the_catalog(string line) =>
        Assert.Contains("mdf-6", Offered($"buckgen {line}"));

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("powershell")]
    public void Each_shell_gets_a_script_that_asks_the_program(string shell)
    {
        var run = Cli.Run("completion", shell);

        run.AssertDone();
        Assert.Contains("[suggest:$", run.Out);
        // A shell takes a carriage return for a part of the command.
        Assert.DoesNotContain('\r', run.Out);
    }

    [Fact]
    public void An_unknown_shell_is_refused_with_those_it_knows() =>
        Cli.Run("completion", "fish").AssertRefused("bash", "zsh", "powershell");

    private static string[] Offered(string line)
    {
        var run = Cli.Run($"[suggest:{line.Length}]", line);
        run.AssertDone();
        return run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }
}
