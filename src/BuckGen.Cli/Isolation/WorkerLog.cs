using System.Diagnostics;
using BuckGen.Plugins;

namespace BuckGen.Cli.Isolation;

/// <summary>
/// What the process with the plug-ins has reported so far: which call runs, since when, and how its command ended.
/// </summary>
internal sealed class WorkerLog
{
    private readonly Lock gate = new();
    private readonly Stack<(PluginCall Call, long Since)> calls = new();
    private int? status;

    /// <summary>The exit status of the command; null until it is done.</summary>
    public int? Status
    {
        get
        {
            lock (gate) return status;
        }
    }

    /// <summary>Reads all lines until the other side closes.</summary>
    public void Read(Stream pipe)
    {
        using var reader = new StreamReader(pipe);
        while (reader.ReadLine() is { } line)
            if (WorkerLine.Read(line) is { } report)
                lock (gate) Take(report);
    }

    /// <summary>The part whose call takes longer than it may; null for none.</summary>
    public LeftOutPart? Overdue()
    {
        lock (gate)
            return calls.TryPeek(out var running) && Stopwatch.GetElapsedTime(running.Since) > running.Call.Allowed
                ? new(running.Call.File, running.Call.Part, running.Call.Overdue)
                : null;
    }

    /// <summary>The part whose call runs; null for none.</summary>
    /// <param name="reason">What it did.</param>
    public LeftOutPart? RunningPart(string reason)
    {
        lock (gate)
            return calls.TryPeek(out var running) ? new(running.Call.File, running.Call.Part, reason) : null;
    }

    private void Take(WorkerLine report)
    {
        switch (report.Event)
        {
            case WorkerEvent.Begins:
                calls.Push((new(report.File, report.Part, TimeSpan.FromSeconds(report.Seconds)), Stopwatch.GetTimestamp()));
                break;
            case WorkerEvent.Ends:
                calls.TryPop(out _);
                break;
            case WorkerEvent.Done:
                status = report.Status;
                break;
        }
    }
}
