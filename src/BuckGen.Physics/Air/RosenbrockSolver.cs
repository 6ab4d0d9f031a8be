namespace BuckGen.Physics.Air;

/// <summary>Integrates two ordinary differential equations of which one may be much stiffer than the other.</summary>
/// <remarks>
/// The second-order Rosenbrock method ROS2, which is L-stable and keeps its order with an approximate Jacobian (J. G. Verwer, E.
/// J. Spee, J. G. Blom, W. Hundsdorfer, SIAM J. Sci. Comput. 20 (1999) 1456, from memory). The Jacobian is found by forward
/// differences. The step size depends on the error estimate only, so the result depends on nothing but the input.
/// </remarks>
internal static class RosenbrockSolver
{
    /// <summary>Limits the error of one step, in the unit of the unknowns, which should be near 1.</summary>
    private static readonly AdaptiveStep Control = new(1e-5);

    private const double Gamma = 1 - 0.70710678118654752;

    /// <summary>The two unknowns at a time, s.</summary>
    internal readonly record struct State(double Time, double X, double Y);

    /// <summary>
    /// Integrates until X has fallen to a limit or the time is over; the last state lies on the limit or at the end.
    /// </summary>
    public static List<State> Integrate(
        Func<double, double, (double X, double Y)> derivative, double x, double y, double limit, double maxTime)
    {
        var states = new List<State> { new(0, x, y) };
        var step = 1e-5;
        while (states[^1] is var now && now.X > limit && now.Time < maxTime)
        {
            var stepSize = Math.Min(step, maxTime - now.Time);
            var (next, error) = Step(derivative, now, stepSize);
            step = Control.Next(stepSize, error);
            if (Control.Rejects(error)) continue;
            states.Add(next.X > limit ? next : LimitCrossing(derivative, now, next, limit));
        }
        return states;
    }

    /// <summary>The state in which X reaches the limit, by halving the step that passed it.</summary>
    private static State LimitCrossing(
        Func<double, double, (double X, double Y)> derivative, State before, State after, double limit)
    {
        var stepSize = AdaptiveStep.ShortestTo(after.Time - before.Time, s => Step(derivative, before, s).Next.X > limit);
        return Step(derivative, before, stepSize).Next with { X = limit };
    }

    private static (State Next, double Error) Step(
        Func<double, double, (double X, double Y)> derivative, State now, double stepSize)
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
            now.Y + stepSize / 2 * (3 * first.Y + second.Y)), error);
    }
}
