using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text.RegularExpressions;
using BuckGen.Cutting.Drilling;
using BuckGen.Fuzz.Tests.Cases;
using BuckGen.Fuzz.Tests.Laws;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;
using BuckGen.Tests.Intake.Fuzzing;

namespace BuckGen.Fuzz.Tests.Runs;

/// <summary>What many runs came to.</summary>
internal sealed partial class FuzzReport
{
    private const int MaxReported = 40, Slowest = 5, Frames = 6;

    // No design works for so long; one that does hangs.
    private static readonly TimeSpan Hanging = TimeSpan.FromMinutes(10);

    private readonly ConcurrentBag<(int Number, string Fault)> faults = [];
    private readonly ConcurrentDictionary<string, int> refusals = new();
    private readonly ConcurrentBag<(DesignCase Case, IReadOnlyList<(string Step, double Seconds)> Steps)> times = [];
    private int designed, empty;
    private double seconds;

    private FuzzReport()
    {
    }

    /// <summary>Number of runs that gave wood to cut.</summary>
    public int Designed => designed;

    public int Runs => designed + empty + refusals.Values.Sum();

    /// <summary>What is wrong, by the number of the run.</summary>
    public IReadOnlyList<string> Faults => [.. faults.OrderBy(f => f.Number).Select(f => f.Fault)];

    /// <summary>Runs the cases and holds each to the laws.</summary>
    public static FuzzReport Create(FuzzSettings settings, IReadOnlyList<ILaw> laws)
    {
        var report = new FuzzReport();
        var clock = Stopwatch.StartNew();
        Parallel.For(settings.First, settings.First + settings.Count,
            new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, (number, loop) =>
        {
            if (report.faults.Count > MaxReported) loop.Stop();
            else report.Watch(DesignCase.Create(settings.Seed, number), laws);
        });
        report.seconds = clock.Elapsed.TotalSeconds;
        return report;
    }

    public override string ToString() => string.Join(Environment.NewLine,
    [
        FormattableString.Invariant(
            $"{Runs} runs in {seconds:0} s, {designed} with wood, {empty} without, {refusals.Values.Sum()} refused, ")
            + FormattableString.Invariant($"{faults.Count} faults"),
        .. refusals.OrderByDescending(r => r.Value).Select(r => $"{r.Value,8}  {r.Key}"),
        "The slowest:", .. times.SelectMany(t => t.Steps.Select(s => (s.Step, s.Seconds, t.Case)))
            .OrderByDescending(s => s.Seconds).Take(Slowest)
            .Select(s => FormattableString.Invariant($"{s.Seconds,8:0.0} s, {s.Step}: {s.Case}")),
        "All in all:", .. times.SelectMany(t => t.Steps).GroupBy(s => s.Step, s => s.Seconds).OrderByDescending(g => g.Sum())
            .Select(g => FormattableString.Invariant($"{g.Sum(),8:0.0} s, {g.Key}")),
        "Faults:", .. Faults,
    ]);

    private void Watch(DesignCase made, IReadOnlyList<ILaw> laws)
    {
        var clock = new StepClock();
        Run(made, clock, laws);
        times.Add((made, clock.Read()));
    }

    private void Run(DesignCase made, StepClock clock, IReadOnlyList<ILaw> laws)
    {
        using var hanging = new CancellationTokenSource(Hanging);
        try
        {
            var run = DesignRun.Create(made, clock, hanging.Token);
            clock.Mark("judge");
            Interlocked.Increment(ref run.Walls.IsEmpty ? ref empty : ref designed);
            foreach (var law in laws)
                if (law.Broken(run).FirstOrDefault() is { } broken)
                    faults.Add((made.Number, $"{law.GetType().Name}: {broken}; {made}"));
        }
        catch (Exception refusal) when (refusal is OutlineException or SpecException or DrillException)
        {
            refusals.AddOrUpdate(Reason(refusal, made.Drawing), 1, (_, count) => count + 1);
        }
        catch (Exception fault)
        {
            faults.Add((made.Number, $"{(hanging.IsCancellationRequested ? "hangs: " : "")}{InALine(fault)}; {made}"));
        }
    }

    /// <summary>The exception with the place in our own code that it comes from.</summary>
    private static string InALine(Exception fault)
    {
        var own = (fault.StackTrace ?? "").Split('\n').Where(l => l.Contains("at BuckGen.", StringComparison.Ordinal))
            .Take(Frames).Select(l => l.Split('(')[0].Trim());
        return $"{fault.GetType().Name}: {fault.Message.ReplaceLineEndings(" ")} {string.Join(' ', own)}";
    }

    /// <summary>
    /// The message without what differs from drawing to drawing; how a damaged file is broken does not matter here.
    /// </summary>
    private static string Reason(Exception refusal, RandomDrawing drawing)
    {
        var message = refusal.Message.Replace(drawing.FileName, "", StringComparison.Ordinal).TrimStart(':', ',', ' ');
        if (drawing.IsDamaged && refusal is OutlineException && !message.Contains("offset", StringComparison.Ordinal))
            return "a damaged file";
        message = Quoted().Replace(Number().Replace(message, "#"), "\"\"");
        return $"{refusal.GetType().Name}: {(message.Length > 75 ? message[..75] : message)}";
    }

    [GeneratedRegex(@"[-+]?\d[\d.,]*(E[-+]?\d+)?")]
    private static partial Regex Number();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex Quoted();
}
