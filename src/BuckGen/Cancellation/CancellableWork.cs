namespace BuckGen.Cancellation;

/// <summary>Work that its caller can leave at any moment, whatever it is doing.</summary>
/// <remarks>
/// Our own loops check the token, but other libraries and plug-ins can't be stopped. Their work continues on a thread of its
/// own, ends at the next check, and its result is dropped.
/// </remarks>
internal static class CancellableWork
{
    /// <summary>The result of the work. After a cancellation the caller goes on at once.</summary>
    /// <param name="work">A pure function: after a cancellation its result is dropped.</param>
    /// <param name="cancellation">Stops the wait.</param>
    /// <exception cref="OperationCanceledException">The wait was stopped.</exception>
    public static T Run<T>(Func<T> work, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        if (!cancellation.CanBeCanceled) return work();
        // On a thread of its own: callers may hold all those of the pool.
        return Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default)
            .WaitAsync(cancellation).GetAwaiter().GetResult();
    }
}
