using BuckGen.Cli.Terminals;
using BuckGen.Plugins;

namespace BuckGen.Cli.Isolation;

/// <summary>Knows which calls of plug-ins run, so that one that ends the program can be named.</summary>
internal sealed class RunningCalls : IProgress<PluginCall>
{
    private readonly Lock gate = new();
    private readonly Stack<PluginCall> running = new();

    /// <inheritdoc/>
    public void Report(PluginCall value)
    {
        lock (gate)
            if (value.Allowed is not null) running.Push(value);
            else running.TryPop(out _);
    }

    /// <summary>Names the plug-in when the process ends while one of its calls runs; the exit status is then ours.</summary>
    /// <param name="error">Where the message goes.</param>
    /// <param name="stopped">Cancelled when the run is stopped, which ends it on purpose.</param>
    public void NameAtExit(TextWriter error, CancellationToken stopped) => AppDomain.CurrentDomain.ProcessExit += (_, _) =>
    {
        if (stopped.IsCancellationRequested || Innermost() is not { } call) return;
        Environment.ExitCode = ExitStatus.BadInput;
        error.WriteLine(
            $"buckgen: the plug-in {Path.GetFileNameWithoutExtension(call.File)} ({call.File}) ended the program; the last "
            + $"complete result is whole. Leave it out, or use {Commands.PluginOptions.Isolate}.");
    };

    private PluginCall? Innermost()
    {
        lock (gate) return running.TryPeek(out var call) ? call : null;
    }
}
