using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using BuckGen.Cli.Isolation;
using BuckGen.Plugins;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>
/// The plug-in Evil on the real command line. Each promise that 'buckgen plugins' makes is a row here: in the program's own process, and in one for the plug-ins.
/// </summary>
public sealed class EvilPluginTests : Workshop
{
    private const string Job = PlateJob + "\n[base]\nstock = \"MDF 12\"\n[sheet]\n[vents]\npattern = \"evil-pattern\"\n[forming]\npredict = false\n[output]\nformats = [\"evil-writer\"]\n";

    private static readonly Dictionary<string, string> SmallMemory = new() { ["DOTNET_GCHeapHardLimit"] = (400L << 20).ToString("X", CultureInfo.InvariantCulture) };

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

    [Theory]
    [InlineData("check: exit", "The plug-in part \"evil check\" failed: it ended the program (exit code 0).")]
    [InlineData("check: exit elsewhere", "The plug-in part \"evil check\" failed: it ended the program (exit code 0).")]
    [InlineData("pattern: fail fast", "The plug-in part \"evil-pattern\" failed: it ended the program (exit code 134).")]
    [InlineData("section: overflow the stack", "The plug-in part \"Evil section\" failed: it ended the program (exit code 134).")]
    [InlineData("writer: fill the memory", "The plug-in part \"evil-writer\" failed: it used up the memory.")]
    [InlineData("check: hang", "The plug-in part \"evil check\" failed: it did not come back within 4 s.")]
    [InlineData("check: spin", "The plug-in part \"evil check\" failed: it did not come back within 4 s.")]
    [InlineData("check: print without end", "The plug-in part \"evil check\" failed: it printed without end.")]
    [InlineData("check: null finding", "The plug-in part \"evil check\" failed: finding 1 is null.")]
    [InlineData("check: stay", null)]
    public void In_a_process_of_its_own_any_part_is_left_out(string deed, string? finding)
    {
        var run = Make(deed, "isolate-plugins = true\n" + Job);

        run.AssertDone();
        Assert.Equal(finding is null ? [] : [finding.Replace("finding 1", "finding 2", StringComparison.Ordinal)], Failures("out"));
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

    [Fact]
    public void Everything_at_once()
    {
        var run = Make("recognises: exit\ncheck: overflow the stack\nsection: exit elsewhere\npattern: hang\njig: edges that cross\nwriter: fill the memory", "isolate-plugins = true\n" + Job);

        run.AssertDone();
        Assert.Equal(
            [
                "The plug-in part \"Evil section\" failed: it ended the program (exit code 0).", "The plug-in part \"evil check\" failed: it ended the program (exit code 134).",
                "The plug-in part \"evil-jig\" failed: the edges of layer EVIL 1 cross, or run the wrong way round.", "The plug-in part \"evil-pattern\" failed: it did not come back within 20 s.",
                "The plug-in part \"evil-writer\" failed: it used up the memory.",
            ],
            Failures("out").Order(StringComparer.Ordinal));
        Assert.Contains("evil-reader", File.ReadAllText(At("out/summary.json")));
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
        Assert.Equal((here.Status, here.Out.Replace(At("out"), At("there"), StringComparison.Ordinal), here.Error), (there.Status, there.Out, there.Error));
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
        Assert.All((string[])["isolate-plugins", "left out, the job goes on", "ends the job with one line"], s => Assert.Contains(s, RealProgram.Run(Folder, "plugins").Out));

    [Theory]
    [InlineData("INT")]
    [InlineData("KILL")]
    public async Task When_the_program_is_stopped_the_process_for_the_plug_ins_ends_with_it(string signal)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such signals.");
        using var program = RealProgram.Start(Folder, SmallMemory, "make", Prepared("check: tell the process and hang", "isolate-plugins = true\n" + Job));
        var error = program.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        Wait(() => File.Exists(At("process")));
        using var worker = Process.GetProcessById(int.Parse(File.ReadAllText(At("process")), CultureInfo.InvariantCulture));

        Process.Start("kill", ["-" + signal, FormattableString.Invariant($"{program.Id}")]).WaitForExit();

        Wait(() => program.HasExited && worker.HasExited);
        Assert.Equal(signal == "INT" ? "buckgen: stopped; the last complete result is untouched.\n" : "", await error);
        Assert.Empty(Present("out"));
    }

    [Fact]
    public void Only_a_part_whose_call_runs_is_to_blame()
    {
        WorkerLine begins = WorkerLine.Of(new PluginCall("Evil.dll", "evil check", TimeSpan.FromSeconds(60))), ends = WorkerLine.Of(new PluginCall("Evil.dll", "evil check", null));

        Assert.Equal(new("Evil.dll", "evil check", "it fell"), Log(begins).Blamed("it fell"));
        Assert.Equal("Evil.dll", Log(begins, ends, begins).Blamed("it fell")!.File);
        Assert.Null(Log(begins, ends).Blamed("it fell"));
        Assert.Null(Log(begins).Overdue());
        Assert.Equal("it did not come back within 0 s", Log(begins with { Seconds = 0 }).Overdue()!.Reason);
        Assert.Equal((null as int?, 1), (Log(begins).Status, Log(begins, ends, new(WorkerEvent.Done, Status: 1)).Status));
    }

    private static WorkerLog Log(params WorkerLine[] lines)
    {
        var log = new WorkerLog();
        log.Read(new MemoryStream(Encoding.UTF8.GetBytes(string.Join('\n', lines.Select(l => l.Written())))));
        return log;
    }

    private static void Wait(Func<bool> until)
    {
        // Only a fault takes as long.
        for (var i = 0; i < 6000 && !until(); i++) Thread.Sleep(10);
        Assert.True(until());
    }

    private Cli Make(string deed, string job, params string[] args) => RealProgram.Run(Folder, SmallMemory, ["make", Prepared(deed, job), .. args]);

    private string Prepared(string deed, string job)
    {
        Write("plate.svg", Plate);
        Write("Evil.txt", deed);
        if (!File.Exists(At("Evil.dll"))) File.Copy(PluginTests.Sample("Evil", "tests/plugins"), At("Evil.dll"));
        var seconds = deed.Contains('\n', StringComparison.Ordinal) ? 20 : deed.Contains(": hang", StringComparison.Ordinal) || deed.EndsWith("spin", StringComparison.Ordinal) ? 4 : 60;
        return Write("job.toml", $"plugins = [\"Evil.dll\"]\nplugin-seconds = {seconds}\n" + job);
    }

    private string[] Failures(string folder) =>
        [.. JsonDocument.Parse(File.ReadAllBytes(At(folder + "/summary.json"))).RootElement.GetProperty("findings").EnumerateArray()
            .Where(f => f.GetProperty("id").GetString() == "plugin-failed").Select(f => f.GetProperty("message").GetString()!)];
}
