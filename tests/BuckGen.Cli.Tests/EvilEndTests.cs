using System.Diagnostics;
using System.Globalization;
using System.Text;
using BuckGen.Cli.Isolation;
using BuckGen.Plugins;
using Xunit;

namespace BuckGen.Cli.Tests;

/// <summary>The plug-in Evil with a part of every kind, and how the process for the plug-ins ends.</summary>
[Trait("Tier", "slow")]
public sealed class EvilEndTests : EvilWorkshop
{
    [Fact]
    public void Everything_at_once()
    {
        var run = Make(
            "recognises: exit\ncheck: overflow the stack\nsection: exit elsewhere\npattern: fail fast\njig: edges that "
            + "cross\nwriter: fill the memory", "isolate-plugins = true\n" + Job);

        run.AssertDone();
        Assert.Equal(
            [
                "The plug-in part \"Evil section\" failed: it ended the program (exit code 0).",
                "The plug-in part \"evil check\" failed: it ended the program (exit code 134).",
                "The plug-in part \"evil-jig\" failed: the edges of layer EVIL 1 cross, or run the wrong way round.",
                "The plug-in part \"evil-pattern\" failed: it ended the program (exit code 134).",
                "The plug-in part \"evil-writer\" failed: it used up the memory.",
            ],
            Failures("out").Order(StringComparer.Ordinal));
        Assert.Contains("evil-reader", File.ReadAllText(At("out/summary.json")));
    }

    [Theory]
    [InlineData("INT")]
    [InlineData("KILL")]
    public async Task When_the_program_is_stopped_the_process_for_the_plug_ins_ends_with_it(string signal)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such signals.");
        using var program =
            RealProgram.Start(Folder, SmallMemory, "make",
                Prepared("check: tell the process and hang", "isolate-plugins = true\n" + Job));
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
        WorkerLine begins = WorkerLine.FromCall(new PluginCall("Evil.dll", "evil check", TimeSpan.FromSeconds(60))),
            ends = WorkerLine.FromCall(new PluginCall("Evil.dll", "evil check", null));

        Assert.Equal(new("Evil.dll", "evil check", "it fell"), Log(begins).RunningPart("it fell"));
        Assert.Equal("Evil.dll", Log(begins, ends, begins).RunningPart("it fell")!.File);
        Assert.Null(Log(begins, ends).RunningPart("it fell"));
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
}
