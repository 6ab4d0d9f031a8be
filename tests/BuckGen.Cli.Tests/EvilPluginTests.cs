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
    [InlineData("check: hang\nsection: fifty million\nwriter: hang",
        "The plug-in part \"Evil section\" failed: it gave more than 1000 lines.",
        "The plug-in part \"evil check\" failed: it did not come back within 4 s.",
        "The plug-in part \"evil-writer\" failed: it did not come back within 4 s.")]
    [InlineData("check: fill the memory", "The plug-in part \"evil check\" failed: it used up the memory.")]
    [InlineData("check: message with brackets\nsection: stay")]
    public void In_the_program_itself_the_job_goes_on(string deeds, params string[] findings)
    {
        var run = Make(deeds, Job);

        run.AssertDone();
        Assert.Equal(findings, Failures("out").Order(StringComparer.Ordinal));
        Assert.Contains("Wrote ", run.Out);
    }

    [Fact]
    public void In_the_program_itself_a_thread_that_fails_is_reported_and_the_job_goes_on()
    {
        var run = Make("check: throw elsewhere\nsection: throw in the pool\njig: throw later", Job);

        Assert.Equal(0, run.Status);
        Assert.Empty(Failures("out"));
        Assert.Equal(3, run.Error.Count(c => c == '\n'));
        Assert.All((string[])["a thread", "the pool", "an event"],
            s => Assert.Contains($"a thread of its own failed, and the job goes on: {s} fell apart", run.Error));
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
