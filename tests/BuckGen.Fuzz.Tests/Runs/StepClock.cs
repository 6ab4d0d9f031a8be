using System.Diagnostics;
using BuckGen.Design;

namespace BuckGen.Fuzz.Tests.Runs;

/// <summary>Remembers which step of a design took longest, for whoever looks for slow ones.</summary>
internal sealed class StepClock : IProgress<DesignProgress>
{
    private readonly List<(string Step, long At)> marks = [("read", Stopwatch.GetTimestamp())];

    public void Report(DesignProgress value) => Mark(value.Step);

    public void Mark(string step) => marks.Add((step, Stopwatch.GetTimestamp()));

    /// <summary>Each step so far with its time, s.</summary>
    public IReadOnlyList<(string Step, double Seconds)> Read() =>
        [.. marks.Zip(marks.Skip(1).Append(("", Stopwatch.GetTimestamp())),
            (a, b) => (a.Step, Stopwatch.GetElapsedTime(a.At, b.Item2).TotalSeconds))];
}
