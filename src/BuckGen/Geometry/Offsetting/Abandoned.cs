namespace BuckGen.Geometry.Offsetting;

/// <summary>Work of another library that can't be stopped: after a cancellation it ends on its own, and its result is dropped.</summary>
internal static class Abandoned
{
    /// <summary>The result of the work. When it is cancelled first, the caller goes on at once.</summary>
    /// <param name="cancellation">Stops the wait.</param>
    /// <param name="work">A pure function: nobody waits for it after a cancellation.</param>
    /// <exception cref="OperationCanceledException">The wait was stopped.</exception>
    public static T When<T>(CancellationToken cancellation, Func<T> work)
    {
        cancellation.ThrowIfCancellationRequested();
        if (!cancellation.CanBeCanceled) return work();
        // On a thread of its own: callers may hold all those of the pool.
        return Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)
            .WaitAsync(cancellation).GetAwaiter().GetResult();
    }
}
