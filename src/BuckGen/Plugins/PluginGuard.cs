using BuckGen.Findings;
using BuckGen.Intake.Outlines;

namespace BuckGen.Plugins;

/// <summary>
/// Runs the code of one part of a plug-in: on a thread of its own, so that a call that never ends can be left behind.
/// </summary>
/// <param name="file">The full path of the plug-in.</param>
/// <param name="part">The name of the part; empty while the plug-in starts.</param>
/// <param name="run">How plug-ins are called.</param>
internal sealed class PluginGuard(string file, string part, PluginRun run)
{
    /// <summary>Why the part is not called any more; null while it is.</summary>
    private string? leftOut = run.LeftOut.FirstOrDefault(l => l.File == file && l.Part == part)?.Reason;

    /// <summary>Calls the part.</summary>
    /// <param name="call">What runs; it must walk sequences to their end.</param>
    /// <exception cref="PluginException">It failed, took too long, or is left out.</exception>
    /// <exception cref="OutlineException">A reader refuses the file.</exception>
    /// <exception cref="OperationCanceledException">The run is stopped; what the plug-in itself cancels is a failure of its
    /// own.</exception>
    public T Call<T>(Func<T> call)
    {
        if (leftOut is not null) throw new PluginException(leftOut);
        run.Cancellation.ThrowIfCancellationRequested();
        var (begun, ended) = (new PluginCall(file, part, part.Length == 0 ? run.Start : run.Call),
            new PluginCall(file, part, null));
        var outcome = new TaskCompletionSource<Outcome<T>>(TaskCreationOptions.RunContinuationsAsynchronously);
        run.Calls?.Report(begun);
        try
        {
            new Thread(() => outcome.SetResult(TryCall(call)))
            {
                IsBackground = true,
                Name = $"plug-in {Path.GetFileNameWithoutExtension(file)}"
            }.Start();
            if (!outcome.Task.Wait(run.IsWatched ? Timeout.InfiniteTimeSpan : begun.Allowed!.Value, run.Cancellation))
            {
                leftOut = begun.Overdue;
                throw new PluginException(leftOut);
            }
        }
        finally
        {
            run.Calls?.Report(ended);
        }

        var (result, failure) = outcome.Task.Result;
        return failure is null ? result! : throw failure;
    }

    /// <summary>Nothing of a plug-in's exceptions goes on but their words: they may be classes of its own.</summary>
    private static Outcome<T> TryCall<T>(Func<T> call)
    {
        try
        {
            return new(call(), null);
        }
        catch (OutlineException refusal)
        {
            return new(default, refusal);
        }
        catch (Exception failure)
        {
            return new(default, new PluginException(ForeignCode.Reason(failure)));
        }
    }

    private sealed record Outcome<T>(T? Result, Exception? Failure);
}
