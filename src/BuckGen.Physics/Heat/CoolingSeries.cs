namespace BuckGen.Physics.Heat;

/// <summary>How long the first and the later parts of a series cool on a buck that warms from part to part.</summary>
/// <remarks>
/// A cycle turns the temperatures in the buck before one part into those before the next. After many parts they stay the same.
/// Those parts are found without all that come before them. Of the difference between two cycles, what dies away slowest is
/// extrapolated to its end (Aitken's method for vectors). The cycles go on from there.
/// </remarks>
public static class CoolingSeries
{
    /// <summary>
    /// The cycle counts as repeating when no place in the buck is farther than this from where it will end, degrees C.
    /// </summary>
    public const double Tolerance = 0.1;

    /// <summary>Number of intervals through sheet and buck each; the times are within 1 % of those with many more.</summary>
    private const int Intervals = 24;

    /// <summary>Largest first-order error of one step, degrees C.</summary>
    private const double StepTolerance = 0.3;

    /// <summary>Pairs of cycles before the search ends; some 5 are usual.</summary>
    private const int MaxPairs = 100;

    /// <summary>Ratio of the differences of two cycles beyond which nothing is extrapolated.</summary>
    private const double MaxRatio = 0.98;

    /// <summary>Simulates the first part, and a part after which the cycle repeats.</summary>
    /// <param name="cycle">The cycle.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static CoolingSeriesResult Simulate(CoolingCycle cycle)
    {
        ArgumentNullException.ThrowIfNull(cycle);
        var parts = new Parts(cycle);
        var before = parts.Start;
        if (parts.Form(before) is not var (first, after)) return new(null, null);
        for (var pair = 0; pair < MaxPairs; pair++)
        {
            if (parts.Form(after) is not var (part, next)) return new(first, null);
            var ratio = Ratio(before, after, next);
            if (MaxDifference(after, next) <= Tolerance * (1 - ratio)) return new(first, part);
            before = [.. next.Zip(after, (n, a) => n + ratio / (1 - ratio) * (n - a))];
            if (parts.Form(before) is not var (_, then)) return new(first, null);
            after = then;
        }
        return new(first, null);
    }

    /// <summary>Simulates parts one after the other.</summary>
    /// <param name="cycle">The cycle.</param>
    /// <param name="count">How many parts.</param>
    internal static IEnumerable<CooledPart> OneByOne(CoolingCycle cycle, int count)
    {
        var parts = new Parts(cycle);
        var buck = parts.Start;
        for (var i = 0; i < count && parts.Form(buck) is var (part, next); i++)
        {
            yield return part;
            buck = next;
        }
    }

    private static double MaxDifference(double[] a, double[] b) => a.Zip(b, (x, y) => Math.Abs(x - y)).Max();

    /// <summary>How much of the difference between two cycles is left between the next two, 0 to 0.98.</summary>
    private static double Ratio(double[] before, double[] after, double[] next)
    {
        var (product, square) = (0.0, 0.0);
        for (var i = 0; i < before.Length; i++)
        {
            product += (next[i] - after[i]) * (after[i] - before[i]);
            square += (after[i] - before[i]) * (after[i] - before[i]);
        }
        return square > 0 ? Math.Clamp(product / square, 0, MaxRatio) : 0;
    }

    /// <summary>Forms parts on the buck.</summary>
    private sealed class Parts
    {
        private readonly CoolingCycle cycle;
        private readonly SheetConduction covered, bare;

        public Parts(CoolingCycle cycle)
        {
            cycle.Validate();
            this.cycle = cycle;
            covered = new(cycle.Sheet, cycle.Buck, cycle.Air, Intervals, StepTolerance);
            bare = new(cycle.Buck.Body, cycle.Buck.FarFace, cycle.Bare, Intervals, StepTolerance);
        }

        /// <summary>Temperatures through the buck before the first part, from its far face up, degrees C.</summary>
        public double[] Start => bare.Grid.Uniform(cycle.BuckStart);

        /// <summary>One part, and the buck before the next; null when the part never becomes cold enough.</summary>
        public (CooledPart Part, double[] Buck)? Form(double[] buck)
        {
            var (states, end) = covered.Integrate(
                covered.Grid.Place(cycle.SheetStart, buck), t => t.Hottest - cycle.TakeOff, SheetHeating.MaxTime);
            if (states[^1].Temperatures.Hottest > cycle.TakeOff) return null;
            var warm = end[..buck.Length];
            var next = bare.Integrate(warm, _ => 1, cycle.BareSeconds).End;
            return (new(states[^1].Seconds, buck[^1], warm[^1]), next);
        }
    }
}
