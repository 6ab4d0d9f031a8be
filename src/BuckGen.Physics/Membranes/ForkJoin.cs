namespace BuckGen.Physics.Membranes;

/// <summary>Does two things at once, thousands of times in a row, on this thread and another.</summary>
/// <remarks>
/// Handing over through the pool takes about as long as the work itself on a small mesh; a thread of its own that looks out for
/// work a little before it sleeps takes a few microseconds. Where the other thread has not even begun when this one is done,
/// since the machine is busy, this one does the rest too. Who does what changes nothing in the results.
/// </remarks>
internal sealed class ForkJoin : IDisposable
{
    /// <summary>Number of triangles from which on two hands are faster than one.</summary>
    public const int MinTriangles = 12_000;

    private readonly SemaphoreSlim workReady = new(0), workDone = new(0);
    private Thread? worker;
    private Action? work;
    private Exception? failure;
    private int claimed = 1;
    private volatile bool isDisposed;

    /// <summary>Does one thing and, where there is one, another; comes back when both are done.</summary>
    public void Run(Action onThisThread, Action? onWorker)
    {
        if (onWorker is null || Environment.ProcessorCount == 1)
        {
            onThisThread();
            onWorker?.Invoke();
            return;
        }
        if (worker is null)
        {
            worker = new(WorkLoop) { IsBackground = true, Name = "second half of a membrane" };
            worker.Start();
        }
        work = onWorker;
        Volatile.Write(ref claimed, 0);
        if (workReady.CurrentCount == 0) workReady.Release();
        onThisThread();
        if (TryClaim()) onWorker();
        else workDone.Wait();
        if (failure is not null) throw new InvalidOperationException("The second half of the triangles failed: " + failure.Message, failure);
    }

    public void Dispose()
    {
        isDisposed = true;
        workReady.Release();
        worker?.Join();
        workReady.Dispose();
        workDone.Dispose();
    }

    /// <summary>Whether the work is still free; the first thread to ask does it.</summary>
    private bool TryClaim() => Interlocked.Exchange(ref claimed, 1) == 0;

    private void WorkLoop()
    {
        while (true)
        {
            workReady.Wait();
            if (isDisposed) return;
            if (!TryClaim()) continue;
            try
            {
                work!();
            }
#pragma warning disable CA1031 // Any exception goes to the thread that asked.
            catch (Exception e)
#pragma warning restore CA1031
            {
                failure = e;
            }
            workDone.Release();
        }
    }
}
