namespace BuckGen.Physics.Heat;

/// <summary>One step in time of the sheet's temperatures.</summary>
/// <remarks>
/// The implicit method of two stages by R. Alexander (SIAM J. Numer. Anal. 14 (1977) 1006, from memory): of second order like
/// that of Crank and Nicolson, but it does not ring when a hot face suddenly meets something cold. The radiation of the faces
/// makes each stage non-linear; Newton's method solves it.
/// </remarks>
internal static class HeatStep
{
    private const double Gamma = 1 - 0.70710678118654752;

    /// <summary>The temperatures a while later, and how large the step's error might be, degrees C.</summary>
    public static (double[] Next, double Error) Take(double[] now, double seconds, SheetGrid grid, SheetFace first, SheetFace second)
    {
        var stage = Gamma * seconds;
        var early = Stage(now, now, stage, grid, first, second);
        var from = new double[now.Length];
        for (var i = 0; i < now.Length; i++) from[i] = now[i] + (1 - Gamma) / Gamma * (early[i] - now[i]);
        var next = Stage(from, early, stage, grid, first, second);

        var error = 0.0;
        // The change that the second stage adds over the first one's slope: the error of a first-order step, so a safe estimate.
        for (var i = 0; i < now.Length; i++) error = Math.Max(error, Math.Abs(next[i] - from[i] - (early[i] - now[i])));
        return (next, error);
    }

    /// <summary>Solves T - from = seconds · slope(T).</summary>
    private static double[] Stage(double[] from, double[] guess, double seconds, SheetGrid grid, SheetFace first, SheetFace second)
    {
        var capacity = grid.Capacity;
        var conductance = grid.Conductance;
        var last = from.Length - 1;
        var found = (double[])guess.Clone();
        var (diagonal, rest) = (new double[from.Length], new double[from.Length]);
        for (var round = 0; round < 30; round++)
        {
            for (var i = 0; i <= last; i++)
            {
                var (below, above) = (i > 0 ? conductance[i - 1] : 0, i < last ? conductance[i] : 0);
                var heat = (i > 0 ? below * (found[i - 1] - found[i]) : first.FluxInto(found[i]))
                    + (i < last ? above * (found[i + 1] - found[i]) : second.FluxInto(found[i]));
                var loss = below + above + (i == 0 ? first.Loss(found[i]) : 0) + (i == last ? second.Loss(found[i]) : 0);
                diagonal[i] = capacity[i] + seconds * loss;
                rest[i] = seconds * heat - capacity[i] * (found[i] - from[i]);
            }
            if (Correct(found, diagonal, rest, conductance, seconds) < 1e-9) break;
        }
        return found;
    }

    /// <summary>Newton's correction: elimination down, then up. Returns the largest, degrees C.</summary>
    private static double Correct(double[] found, double[] diagonal, double[] rest, ReadOnlySpan<double> conductance, double seconds)
    {
        for (var i = 1; i < found.Length; i++)
        {
            var coupling = seconds * conductance[i - 1];
            diagonal[i] -= coupling * coupling / diagonal[i - 1];
            rest[i] += coupling / diagonal[i - 1] * rest[i - 1];
        }
        var (largest, after) = (0.0, 0.0);
        for (var i = found.Length - 1; i >= 0; i--)
        {
            after = (rest[i] + (i < found.Length - 1 ? seconds * conductance[i] * after : 0)) / diagonal[i];
            found[i] += after;
            largest = Math.Max(largest, Math.Abs(after));
        }
        return largest;
    }
}
