namespace BuckGen.Physics.Membranes;

/// <summary>Does two things at once, thousands of times in a row, on this thread and another.</summary>
/// <remarks>
/// Handing over through the pool takes about as long as the work itself on a small mesh; a thread of its own that looks out for
/// work a little before it sleeps takes a few microseconds. Where the other thread has not even begun when this one is done,
/// since the machine is busy, this one does the rest too. Who does what changes nothing in the results.
/// </remarks>
internal sealed class TwoHands : IDisposable
{
    /// <summary>Number of triangles from which on two hands are faster than one.</summary>
    public const int Worthwhile = 12_000;

    private readonly SemaphoreSlim given = new(0), done = new(0);
    private Thread? other;
    private Action? work;
    private Exception? failure;
    private int taken = 1;
    private volatile bool ended;

    /// <summary>Does one thing and, where there is one, another; comes back when both are done.</summary>
    public void Do(Action here, Action? there)
    {
        if (there is null || Environment.ProcessorCount == 1)
        {
            here();
            there?.Invoke();
            return;
        }
        if (other is null)
        {
            other = new(Work) { IsBackground = true, Name = "second half of a membrane" };
            other.Start();
        }
        work = there;
        Volatile.Write(ref taken, 0);
        if (given.CurrentCount == 0) given.Release();
        here();
        if (Take()) there();
        else done.Wait();
        if (failure is not null) throw new InvalidOperationException("The second half of the triangles failed: " + failure.Message, failure);
    }

    public void Dispose()
    {
        ended = true;
        given.Release();
        other?.Join();
        given.Dispose();
        done.Dispose();
    }

    /// <summary>Whether the work is still free; the first thread to ask does it.</summary>
    private bool Take() => Interlocked.Exchange(ref taken, 1) == 0;

    private void Work()
    {
        while (true)
        {
            given.Wait();
            if (ended) return;
            if (!Take()) continue;
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
            done.Release();
        }
    }
}
