namespace BuckGen.Physics.Air;

/// <summary>Two quantities that change with time, one perhaps much faster than the other, followed step by step.</summary>
/// <remarks>
/// The second-order Rosenbrock method ROS2, which stays stable however stiff the pair is and keeps its order with any estimate of
/// the slopes (J. G. Verwer, E. J. Spee, J. G. Blom, W. Hundsdorfer, SIAM J. Sci. Comput. 20 (1999) 1456, from memory). Steps
/// follow the error estimate, so the result depends on nothing but its input.
/// </remarks>
internal static class RosenbrockSolver
{
    /// <summary>Largest error of one step, in the unit of the quantities, which should be near 1.</summary>
    private const double StepTolerance = 1e-5;

    private const double Gamma = 1 - 0.70710678118654752;

    /// <summary>The pair at a time, s.</summary>
    internal readonly record struct State(double Time, double X, double Y);

    /// <summary>
    /// Follows the pair until X has fallen to a limit or the time is over; the last moment lies on the limit or at the end.
    /// </summary>
    public static List<State> Integrate(Func<double, double, (double X, double Y)> derivative, double x, double y, double limit, double maxTime)
    {
        var states = new List<State> { new(0, x, y) };
        var step = 1e-5;
        while (states[^1] is var now && now.X > limit && now.Time < maxTime)
        {
            var stepSize = Math.Min(step, maxTime - now.Time);
            var (next, error) = Step(derivative, now, stepSize);
            step = stepSize * Math.Clamp(0.9 * Math.Sqrt(StepTolerance / error), 0.2, 4);
            if (error > StepTolerance) continue;
            states.Add(next.X > limit ? next : LimitCrossing(derivative, now, next, limit));
        }
        return states;
    }

    /// <summary>The moment X reaches the limit, by halving the step that passed it.</summary>
    private static State LimitCrossing(Func<double, double, (double X, double Y)> derivative, State before, State after, double limit)
    {
        var (low, high) = (0.0, after.Time - before.Time);
        for (var i = 0; i < 45; i++)
        {
            var middle = (low + high) / 2;
            if (Step(derivative, before, middle).Next.X > limit) low = middle;
            else high = middle;
        }
        return Step(derivative, before, high).Next with { X = limit };
    }

    private static (State Next, double Error) Step(Func<double, double, (double X, double Y)> derivative, State now, double stepSize)
    {
        const double perturbation = 1e-7;
        var here = derivative(now.X, now.Y);
        var (partialX, partialY) = (derivative(now.X + perturbation, now.Y), derivative(now.X, now.Y + perturbation));
        var scale = Gamma * stepSize / perturbation;
        var (a, b) = (1 - scale * (partialX.X - here.X), -scale * (partialY.X - here.X));
        var (c, d) = (-scale * (partialX.Y - here.Y), 1 - scale * (partialY.Y - here.Y));
        var determinant = a * d - b * c;
        (double X, double Y) Solve(double p, double q) => ((d * p - b * q) / determinant, (a * q - c * p) / determinant);

        var first = Solve(here.X, here.Y);
        var there = derivative(now.X + stepSize * first.X, now.Y + stepSize * first.Y);
        var second = Solve(there.X - 2 * first.X, there.Y - 2 * first.Y);
        var error = stepSize / 2 * Math.Max(Math.Abs(first.X + second.X), Math.Abs(first.Y + second.Y));
        return (new(
            now.Time + stepSize,
            now.X + stepSize / 2 * (3 * first.X + second.X),
            now.Y + stepSize / 2 * (3 * first.Y + second.Y)), Math.Max(error, 1e-12));
    }
}
