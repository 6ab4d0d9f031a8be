using System.Collections.Immutable;
using System.Runtime.ExceptionServices;
using System.Runtime.InteropServices;

namespace BuckGen.Cancellation;

/// <summary>The same work on several things, on all cores.</summary>
internal static class ParallelWork
{
    /// <summary>The results, in the order of the things. When several fail, the failure of the first of them is thrown.</summary>
    /// <param name="things">What is worked on.</param>
    /// <param name="work">A pure function of one thing.</param>
    /// <param name="cancellation">Stops the work before its next thing.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static ImmutableArray<TResult> Select<T, TResult>(
        IReadOnlyList<T> things, Func<T, TResult> work, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(work);
        var results = new TResult[things.Count];
        var failures = new ExceptionDispatchInfo?[things.Count];
        Parallel.For(0, things.Count, new ParallelOptions { CancellationToken = cancellation }, i =>
        {
            try
            {
                results[i] = work(things[i]);
            }
            catch (Exception failure)
            {
                failures[i] = ExceptionDispatchInfo.Capture(failure);
            }
        });
        foreach (var failure in failures) failure?.Throw();
        return ImmutableCollectionsMarshal.AsImmutableArray(results);
    }
}
