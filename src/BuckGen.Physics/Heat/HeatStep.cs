namespace BuckGen.Physics.Heat;

/// <summary>One time step of the temperatures through the sheet.</summary>
/// <remarks>
/// The singly diagonally implicit Runge-Kutta method of two stages by R. Alexander (SIAM J. Numer. Anal. 14 (1977) 1006, from
/// memory). It is of second order like the method of Crank and Nicolson, but L-stable, so that it does not oscillate when a hot
/// face suddenly touches something cold. Radiation at the faces makes each stage non-linear; Newton's method solves it.
/// </remarks>
internal static class HeatStep
{
    private const double Gamma = 1 - 0.70710678118654752;

    /// <summary>The temperatures after the step and an estimate of the error of the step, degrees C.</summary>
    public static (double[] Next, double Error) Take(
        double[] now, double seconds, SheetGrid grid, SheetFace first, SheetFace second)
    {
        var stage = Gamma * seconds;
        var firstStage = SolveStage(now, now, stage, grid, first, second);
        var explicitPart = new double[now.Length];
        for (var i = 0; i < now.Length; i++) explicitPart[i] = now[i] + (1 - Gamma) / Gamma * (firstStage[i] - now[i]);
        var next = SolveStage(explicitPart, firstStage, stage, grid, first, second);

        var error = 0.0;
        // The difference between the slopes of the two stages: the error of a first-order step, so the estimate is conservative.
        for (var i = 0; i < now.Length; i++)
            error = Math.Max(error, Math.Abs(next[i] - explicitPart[i] - (firstStage[i] - now[i])));
        return (next, error);
    }

    /// <summary>Solves T - explicitPart = seconds · dT/dt(T).</summary>
    private static double[] SolveStage(
        double[] explicitPart, double[] guess, double seconds, SheetGrid grid, SheetFace first, SheetFace second)
    {
        var capacity = grid.Capacity;
        var conductance = grid.Conductance;
        var last = explicitPart.Length - 1;
        var temperatures = (double[])guess.Clone();
        var (diagonal, residual) = (new double[explicitPart.Length], new double[explicitPart.Length]);
        for (var iteration = 0; iteration < 30; iteration++)
        {
            for (var i = 0; i <= last; i++)
            {
                var (below, above) = (i > 0 ? conductance[i - 1] : 0, i < last ? conductance[i] : 0);
                var heat = (i > 0 ? below * (temperatures[i - 1] - temperatures[i]) : first.FluxInto(temperatures[i]))
                    + (i < last ? above * (temperatures[i + 1] - temperatures[i]) : second.FluxInto(temperatures[i]));
                var loss = below + above + (i == 0 ? first.LinearizedFilmCoefficient(temperatures[i]) : 0)
                    + (i == last ? second.LinearizedFilmCoefficient(temperatures[i]) : 0);
                diagonal[i] = capacity[i] + seconds * loss;
                residual[i] = seconds * heat - capacity[i] * (temperatures[i] - explicitPart[i]);
            }
            if (CorrectByNewton(temperatures, diagonal, residual, conductance, seconds) < 1e-9) break;
        }
        return temperatures;
    }

    /// <summary>
    /// Solves the tridiagonal system for Newton's correction and applies it. Returns the largest correction, degrees C.
    /// </summary>
    private static double CorrectByNewton(
        double[] temperatures, double[] diagonal, double[] residual, ReadOnlySpan<double> conductance, double seconds)
    {
        for (var i = 1; i < temperatures.Length; i++)
        {
            var coupling = seconds * conductance[i - 1];
            diagonal[i] -= coupling * coupling / diagonal[i - 1];
            residual[i] += coupling / diagonal[i - 1] * residual[i - 1];
        }
        var (maxCorrection, correction) = (0.0, 0.0);
        for (var i = temperatures.Length - 1; i >= 0; i--)
        {
            correction = (residual[i] + (i < temperatures.Length - 1 ? seconds * conductance[i] * correction : 0)) / diagonal[i];
            temperatures[i] += correction;
            maxCorrection = Math.Max(maxCorrection, Math.Abs(correction));
        }
        return maxCorrection;
    }
}
