namespace BuckGen.Physics.Membranes;

/// <summary>Runs two actions at once, thousands of times in a row, on this thread and on a worker thread.</summary>
/// <remarks>
/// Dispatch through the thread pool takes about as long as the work on a small mesh. A dedicated thread that spins for a short
/// while before it sleeps starts within a few microseconds. If the worker has not begun by the time this thread is done, because
/// the machine is busy, this thread does both. Which thread does which part does not change the results.
/// </remarks>
internal sealed class ForkJoin : IDisposable
{
    /// <summary>Number of triangles from which on two threads are faster than one.</summary>
    public const int MinTriangles = 12_000;

    private readonly SemaphoreSlim workReady = new(0), workDone = new(0);
    private Thread? worker;
    private Action? work;
    private Exception? failure;
    private int claimed = 1;
    private volatile bool isDisposed;

    /// <summary>Runs one action and, if given, a second one; returns when both are done.</summary>
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
        if (failure is not null)
            throw new InvalidOperationException("The second half of the triangles failed: " + failure.Message, failure);
    }

    public void Dispose()
    {
        isDisposed = true;
        workReady.Release();
        worker?.Join();
        workReady.Dispose();
        workDone.Dispose();
    }

    /// <summary>Whether the work is still free; the first thread that asks gets it.</summary>
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
