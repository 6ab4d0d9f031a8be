using System.Collections.Immutable;

namespace BuckGen.Physics;

/// <summary>Makes evenly spaced samples of the states of a time integration.</summary>
internal static class Resampling
{
    /// <summary>Number of samples.</summary>
    public const int Count = 21;

    /// <summary>The samples, interpolated between neighbouring states, from time 0 to that of the last state.</summary>
    /// <param name="states">At least two states in the order of time, the first at time 0.</param>
    /// <param name="timeOf">The time of a state, s.</param>
    /// <param name="sample">Makes a sample from its time, the two states around it and its share of the way between them.</param>
    public static ImmutableArray<TSample> Evenly<TState, TSample>(
        IReadOnlyList<TState> states, Func<TState, double> timeOf, Func<double, TState, TState, double, TSample> sample)
    {
        var samples = ImmutableArray.CreateBuilder<TSample>(Count);
        var next = 1;
        for (var i = 0; i < Count; i++)
        {
            var time = timeOf(states[^1]) * (i / (Count - 1.0));
            while (next < states.Count - 1 && timeOf(states[next]) < time) next++;
            var (a, b) = (states[next - 1], states[next]);
            samples.Add(sample(time, a, b, (time - timeOf(a)) / (timeOf(b) - timeOf(a))));
        }
        return samples.MoveToImmutable();
    }
}
