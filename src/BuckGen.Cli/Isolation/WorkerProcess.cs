using System.Collections.Immutable;
using System.Diagnostics;
using System.IO.Pipes;
using BuckGen.Plugins;

namespace BuckGen.Cli.Isolation;

/// <summary>How the process with the plug-ins ended.</summary>
/// <param name="Status">The exit status of its command; null when it ended before the command was done.</param>
/// <param name="Out">What it wrote to standard output.</param>
/// <param name="Error">What it wrote to standard error.</param>
/// <param name="FailedPart">The part that ended it; null for none.</param>
/// <param name="Reason">How it ended, when it did so early.</param>
internal sealed record WorkerEnd(int? Status, string Out, string Error, LeftOutPart? FailedPart, string Reason);

/// <summary>Starts the process with the plug-ins and watches it to its end.</summary>
internal static class WorkerProcess
{
    /// <summary>How often it is checked, and how long it may take to end once its command is done or stopped, ms.</summary>
    private const int PollInterval = 20, ExitTimeout = 2000;

    /// <summary>Runs a command.</summary>
    /// <exception cref="OperationCanceledException">The run is stopped.</exception>
    public static WorkerEnd Run(string[] args, ImmutableArray<LeftOutPart> leftOut, CancellationToken cancellation)
    {
        using var pipe = new AnonymousPipeServerStream(PipeDirection.In, HandleInheritability.Inheritable);
        using var process = Process.Start(new WorkerStart(pipe.GetClientHandleAsString(), leftOut, args).Info())!;
        pipe.DisposeLocalCopyOfClientHandle();
        var log = new WorkerLog();
        var listening =
            Task.Factory.StartNew(() => log.Read(pipe), CancellationToken.None, TaskCreationOptions.LongRunning,
                TaskScheduler.Default);
        var (output, errors) = (new CapturedText(process.StandardOutput), new CapturedText(process.StandardError));
        try
        {
            LeftOutPart? culprit = null;
            while (!process.WaitForExit(PollInterval) && log.Status is null && culprit is null
                && !cancellation.IsCancellationRequested)
                culprit = log.Overdue()
                    ?? (output.IsFlooded || errors.IsFlooded ? log.RunningPart("it printed without end") : null);
            if (culprit is null)
            {
                // Its input's end tells it to stop, if it has not.
                process.StandardInput.Close();
                process.WaitForExit(ExitTimeout);
            }

            End(process);
            cancellation.ThrowIfCancellationRequested();
            Task.WaitAll([listening, output.Reading, errors.Reading], ExitTimeout, CancellationToken.None);
            if (log.Status is { } status) return new(status, output.Text, errors.Text, null, "");
            var why = FormattableString.Invariant($"exit code {process.ExitCode}");
            return new(null, "", "", culprit ?? log.RunningPart($"it ended the program ({why})"), why);
        }
        finally
        {
            End(process);
        }
    }

    private static void End(Process process)
    {
        // The processes it started are ended with it.
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        process.WaitForExit(ExitTimeout);
    }
}
