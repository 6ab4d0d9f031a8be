using System.Diagnostics;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Venting;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Files;
using BuckGen.Tests.Design.Venting;
using BuckGen.Tests.Intake.Fuzzing;
using Xunit;

namespace BuckGen.Tests.Design;

/// <summary>
/// A large job stopped at instants all over it. With BUCKGEN_FUZZ the way from the stop to the end may take 0.2 s at most, by the
/// clock or, on a busy machine, in processor time of the process. The usual run stops it twice in its first second and takes no
/// times.
/// </summary>
[Trait("Tier", "slow")]
public sealed class StoppingTimeTests(ITestOutputHelper output)
{
    private static readonly FuzzSettings Settings = FuzzSettings.Or(2);
    private static readonly TimeSpan MaxWait = TimeSpan.FromSeconds(0.2);

    [Fact]
    public async Task A_large_job_ends_soon_after_it_is_stopped()
    {
        var random = new Random(Settings.Seed);
        var whole = Settings.Timed ? Whole() : TimeSpan.FromSeconds(1);
        var (longest, stopped) = (TimeSpan.Zero, 0);
        for (var stop = 0; stop < Settings.Count; stop++)
        {
            var after = whole * random.NextDouble();
            using var source = new CancellationTokenSource();
            var (since, spent) = (new Stopwatch(), TimeSpan.Zero);
            // Not a callback of the token: those run in reverse order, so the job's own would come later.
            var stopping = Task.Run(async () =>
            {
                await Task.Delay(after, CancellationToken.None);
                spent = Environment.CpuUsage.TotalTime;
                since.Start();
                await source.CancelAsync();
            }, CancellationToken.None);
            try
            {
                Run(source.Token);
            }
            catch (OperationCanceledException)
            {
                stopped++;
                var (clock, work) = (since.Elapsed, Environment.CpuUsage.TotalTime - spent);
                output.WriteLine(
                    $"stopped after {after.TotalSeconds:0.00} s, ended {clock.TotalMilliseconds:0} ms later, "
                    + $"{work.TotalMilliseconds:0} ms of processor time");
                var way = clock < work ? clock : work;
                if (way > longest) longest = way;
            }

            await stopping;
        }

        output.WriteLine($"the longest way from the stop to the end took {longest.TotalMilliseconds:0} ms");
        Assert.InRange(stopped, 1, Settings.Count);
        if (Settings.Timed) Assert.True(longest <= MaxWait, $"{longest.TotalMilliseconds:0} ms");
    }

    private static TimeSpan Whole()
    {
        var whole = Stopwatch.StartNew();
        Run(CancellationToken.None);
        return whole.Elapsed;
    }

    /// <summary>
    /// A hundred islands and a jagged one of 1,000 corners, with vents, feet, jig, prediction and every kind of file.
    /// </summary>
    private static void Run(CancellationToken cancellation)
    {
        var loops = Enumerable.Range(0, 100).Select(i => Loop.Circle(new(i % 10 * 40, i / 10 * 40), 15))
            .Append(Loop
                .Polygon(Enumerable.Range(0, 1000)
                    .Select(i => new Vec2(500, 200) + new Vec2(80 + 4 * Math.Sin(i * 0.3), 0).Turned(2 * Math.PI * i / 1000))));
        var spec = Vented.Spec(plenum: PlenumKind.Feet) with { Jig = new() { TrimHeight = 12 }, Prediction = new() };
        var design = BuckDesign.Create(Outline.FromRegion("large", Region.FromLoops(loops)), spec, null, null, cancellation);
        OutputFiles.Create(CutPlan.Create(design, new(), CutScope.Everything, cancellation),
            new OutputOptions { Model = true, Drilling = new() }, true, null, cancellation);
    }
}
