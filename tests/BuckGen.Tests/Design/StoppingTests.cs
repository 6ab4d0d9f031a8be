using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Design.Checks;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Files;
using BuckGen.Output.Reports;
using BuckGen.Settings;
using BuckGen.Tests.Design.Venting;
using Xunit;

namespace BuckGen.Tests.Design;

/// <summary>
/// Whatever the work is doing when it is stopped, its caller gets an <see cref="OperationCanceledException"/> at once and no
/// result.
/// </summary>
[Trait("Tier", "slow")]
public sealed class StoppingTests
{
    private static readonly Outline Sign =
        Outline.FromRegion("sign", Region.FromLoops([Loop.Rectangle(new(0, 0, 120, 80)), Loop.Circle(new(60, 40), 20)]));
    private static readonly BuckSpec Spec =
        Vented.Spec(depth: 12, plenum: PlenumKind.Channels) with { Jig = new() { TrimHeight = 6 } };

    /// <summary>Far longer than any test: who waits for it fails.</summary>
    private static readonly TimeSpan Forever = TimeSpan.FromSeconds(60);

    [Fact]
    public void Work_that_is_stopped_before_it_begins_is_not_begun()
    {
        var stopped = new CancellationToken(canceled: true);
        var design = BuckDesign.Create(Sign, Spec);
        var plan = CutPlan.Create(design, new());
        var region = Sign.Region;

        Stopped(() => BuckDesign.Create(Sign, Spec, null, null, stopped));
        Stopped(() => CutPlan.Create(design, new(), CutScope.Everything, stopped));
        Stopped(() => OutputFiles.Create(plan, new OutputOptions(), false, null, stopped));
        Stopped(() => OutputFiles.Jigs(plan, new OutputOptions(), false, null, stopped));
        Stopped(() => OutputFiles.DrillMap(plan, new OutputOptions(), null, stopped));
        foreach (var offsetter in
            (IOffsetter[])[new ArcOffsetter(), new PolygonOffsetter(0.01), CheckedOffsetter.Standard(Tolerance.Default)])
            Stopped(() => offsetter.Offset(region, 1, CornerJoin.Round, stopped));
        Stopped(() => OffsetCheck.Fault(region, region, 0, CornerJoin.Round, 0.01, stopped));
    }

    [Fact]
    public void A_design_is_stopped_at_every_step()
    {
        var steps = new List<string>();
        BuckDesign.Create(Sign, Spec, null, new RecordingProgress<DesignProgress>(p => steps.Add(p.Step)));
        Assert.True(steps.Count >= 8);
        for (var step = 1; step <= steps.Count; step++)
        {
            using var source = new CancellationTokenSource();
            var told = 0;
            Stopped(() => BuckDesign.Create(Sign, Spec, null, new RecordingProgress<DesignProgress>(p =>
            {
                Interlocked.Increment(ref told);
                if (p.Number == step) source.Cancel();
            }), source.Token));
            Assert.Equal(step, told);
        }
    }

    [Fact]
    public void The_files_are_stopped_at_every_file()
    {
        var plan = CutPlan.Create(BuckDesign.Create(Sign, Spec), new());
        var options = new OutputOptions { Model = true };
        var files = OutputFiles.Create(plan, options).Length;
        for (var file = 1; file < files; file += 4)
        {
            using var source = new CancellationTokenSource();
            var told = 0;
            Stopped(() => OutputFiles.Create(plan, options, false, new RecordingProgress<string>(_ =>
            {
                if (Interlocked.Increment(ref told) == file) source.Cancel();
            }), source.Token));
            Assert.Equal(file, told);
        }
    }

    [Fact]
    public void A_plug_in_that_hangs_is_not_waited_for()
    {
        Hangs(hang =>
            BuckDesign.Create(Sign, Spec with { Vents = Spec.Vents! with { Pattern = new HangingPattern(hang.Enter) } }, null,
                null, hang.Token));
        Hangs(hang => BuckDesign.Create(Sign, Spec, new() { Checks = [new HangingCheck(hang.Enter)] }, null, hang.Token));
        Hangs(hang => BuckDesign.Create(Sign, Spec, new() { Jigs = [new HangingJig(hang.Enter)] }, null, hang.Token));
        var plan = CutPlan.Create(BuckDesign.Create(Sign, Spec), new());
        Hangs(hang =>
            OutputFiles.Create(plan, new OutputOptions { Formats = [new HangingFormat(hang.Enter)] }, false, null, hang.Token));
        Hangs(hang =>
            OutputFiles.Create(plan, new OutputOptions { Sections = [new HangingSection(hang.Enter)] }, false, null, hang.Token));
    }

    [Fact]
    public void What_is_not_stopped_is_the_same_with_a_token()
    {
        using var source = new CancellationTokenSource();
        var (one, other) = (BuckDesign.Create(Sign, Spec), BuckDesign.Create(Sign, Spec, null, null, source.Token));
        var (files, again) = (OutputFiles.Create(CutPlan.Create(one, new()), new OutputOptions()),
            OutputFiles.Create(CutPlan.Create(other, new(), CutScope.Everything, source.Token), new OutputOptions(), false, null,
                source.Token));
        Assert.Equal(files.Select(f => (f.Path, Convert.ToBase64String([.. f.Content]))),
            again.Select(f => (f.Path, Convert.ToBase64String([.. f.Content]))));
    }

    [Fact]
    public void A_fault_comes_through_as_it_is()
    {
        using var source = new CancellationTokenSource();
        Assert.Contains("depth",
            Assert.Throws<SpecException>(() =>
                BuckDesign.Create(Sign, Spec with { Depth = -1 }, null, null, source.Token)).Message);
    }

    private static void Stopped(Func<object?> work) => Assert.ThrowsAny<OperationCanceledException>(work);

    private static void Hangs(Func<Hanging, object> work)
    {
        using var hang = new Hanging();
        Stopped(() => work(hang));
        Assert.True(hang.WasEntered);
    }

    /// <summary>
    /// A part of others: it asks to be stopped when it is called, and then does not come back before the test is over.
    /// </summary>
    private sealed class Hanging : IDisposable
    {
        private readonly CancellationTokenSource source = new();
        private readonly ManualResetEventSlim over = new();

        public CancellationToken Token => source.Token;

        public bool WasEntered { get; private set; }

        public void Enter()
        {
            WasEntered = true;
            source.Cancel();
            Assert.True(over.Wait(Forever), "somebody waited for the part that hangs");
        }

        // The source and the event are still used by what was left behind.
        public void Dispose() => over.Set();
    }

    private sealed class RecordingProgress<T>(Action<T> what) : IProgress<T>
    {
        public void Report(T value) => what(value);
    }

    private sealed class HangingPattern(Action hang) : IVentPattern
    {
        public string Name => "hanging";

        public IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec)
        {
            hang();
            return [];
        }
    }

    private sealed class HangingCheck(Action hang) : IDesignCheck
    {
        public string Name => "hanging";

        public IEnumerable<Finding> Run(DesignView design)
        {
            hang();
            return [];
        }
    }

    private sealed class HangingJig(Action hang) : IJig
    {
        public string Name => "hanging";

        public JigParts? Make(PartShell part, TrimmingSpec spec)
        {
            hang();
            return null;
        }
    }

    private sealed class HangingFormat(Action hang) : ICutFileFormat
    {
        public string Name => "hanging";

        public string Extension => ".hang";

        public ImmutableArray<byte> Write(CutDrawing drawing)
        {
            hang();
            return [];
        }
    }

    private sealed class HangingSection(Action hang) : IReportSection
    {
        public string Title => "Hanging";

        public IEnumerable<string> Lines(CutPlan plan)
        {
            hang();
            return [];
        }
    }
}
