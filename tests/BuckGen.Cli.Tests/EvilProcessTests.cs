using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>The plug-in Evil in a process for the plug-ins: whatever it does, it is left out and the job is done.</summary>
[Trait("Tier", "slow")]
public sealed class EvilProcessTests : EvilWorkshop
{
    [Theory]
    [InlineData("check: exit", "The plug-in part \"evil check\" failed: it ended the program (exit code 0).")]
    [InlineData("check: hang", "The plug-in part \"evil check\" failed: it did not come back within 4 s.")]
    [InlineData("check: spin", "The plug-in part \"evil check\" failed: it did not come back within 4 s.")]
    [InlineData("check: print without end", "The plug-in part \"evil check\" failed: it printed without end.")]
    [InlineData("check: null finding", "The plug-in part \"evil check\" failed: finding 1 is null.")]
    [InlineData("check: stay", null)]
    public void In_a_process_of_its_own_any_part_is_left_out(string deed, string? finding)
    {
        var run = Make(deed, "isolate-plugins = true\n" + Job);

        run.AssertDone();
        Assert.Equal(finding is null ? [] : [finding.Replace("finding 1", "finding 2", StringComparison.Ordinal)],
            Failures("out"));
        Assert.Contains("Wrote ", run.Out);
    }

    [Fact]
    public void In_a_process_of_its_own_a_plug_in_that_ends_it_while_it_starts_is_left_out()
    {
        var run = Make("start: exit", "isolate-plugins = true\n" + PlateJob);

        Assert.Equal(0, run.Status);
        Assert.Equal($"Plug-in Evil ({At("Evil.dll")}) is left out: it ended the program (exit code 0).\n", run.Error);
        Assert.Contains("summary.json", Present("out"));
    }
}
