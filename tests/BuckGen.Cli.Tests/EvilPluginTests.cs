using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>
/// The plug-in Evil on the real command line. Each promise that 'buckgen plugins' makes is a row: here in the program's own
/// process, and in one for the plug-ins in <see cref="EvilProcessTests"/>.
/// </summary>
[Trait("Tier", "slow")]
public sealed class EvilPluginTests : EvilWorkshop
{
    [Theory]
    [InlineData("check: hang", "The plug-in part \"evil check\" failed: it did not come back within 4 s.")]
    [InlineData("writer: hang", "The plug-in part \"evil-writer\" failed: it did not come back within 4 s.")]
    [InlineData("check: fill the memory", "The plug-in part \"evil check\" failed: it used up the memory.")]
    [InlineData("section: fifty million", "The plug-in part \"Evil section\" failed: it gave more than 1000 lines.")]
    [InlineData("check: stay", null)]
    [InlineData("check: message with brackets", null)]
    [InlineData("check: throw elsewhere", null, "a thread of its own failed, and the job goes on: a thread fell apart")]
    [InlineData("check: throw in the pool", null, "a thread of its own failed, and the job goes on: the pool fell apart")]
    [InlineData("check: throw later", null, "a thread of its own failed, and the job goes on: an event fell apart")]
    public void In_the_program_itself_the_job_goes_on(string deed, string? finding, string? told = null)
    {
        var run = Make(deed, Job);

        Assert.Equal(0, run.Status);
        Assert.Equal(finding is null ? [] : [finding], Failures("out"));
        Assert.Contains(told ?? "", run.Error);
        Assert.Equal(told is null ? 0 : 1, run.Error.Count(c => c == '\n'));
        Assert.Contains("Wrote ", run.Out);
    }

    [Theory]
    [InlineData("check: exit")]
    [InlineData("check: exit elsewhere")]
    [InlineData("start: exit")]
    [InlineData("writer: exit")]
    public void In_the_program_itself_one_that_ends_it_is_named_and_nothing_is_written(string deed)
    {
        var run = Make(deed, Job);

        run.AssertRefused($"the plug-in Evil ({At("Evil.dll")}) ended the program; the last complete result is whole");
        Assert.Empty(Present("out"));
    }

    [Fact]
    public void What_a_plug_in_prints_is_no_answer_of_the_program()
    {
        var run = Make("check: print", Job, "--json");

        Assert.Equal("printed by a plug-in\n", run.Error);
        Assert.Equal("A plate", run.Json.GetProperty("title").GetString());
    }

    [Fact]
    public void Both_ways_give_the_same_files_and_say_the_same()
    {
        var (here, there) = (Make("jig: good", Job), Make("jig: good", Job, "--isolate-plugins", "--out", At("there")));

        here.AssertDone();
        Assert.Equal((here.Status, here.Out.Replace(At("out"), At("there"), StringComparison.Ordinal), here.Error),
            (there.Status, there.Out, there.Error));
        Assert.Equal(Present("out"), Present("there"));
        Assert.Contains("jig/evil-01.dxf", Present("there"));
        Assert.All(Present("out"), f => Assert.Equal(File.ReadAllBytes(At($"out/{f}")), File.ReadAllBytes(At($"there/{f}"))));
    }

    [Fact]
    public void A_refusal_is_the_same_line_both_ways()
    {
        var (here, there) = (Make("", Job + "[nonsense]\n"), Make("", Job + "[nonsense]\n", "--isolate-plugins"));

        here.AssertRefused("[nonsense] is not known");
        Assert.Equal(here, there);
    }

    [Fact]
    public void The_list_says_what_each_way_promises() =>
        Assert.All((string[])["isolate-plugins", "left out, the job goes on", "ends the job with one line"],
            s => Assert.Contains(s, RealProgram.Run(Folder, "plugins").Out));
}
