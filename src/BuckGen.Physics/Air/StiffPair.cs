namespace BuckGen.Physics.Air;

/// <summary>Two quantities that change with time, one perhaps much faster than the other, followed step by step.</summary>
/// <remarks>
/// The second-order Rosenbrock method ROS2, which stays stable however stiff the pair is and keeps its order with any estimate of
/// the slopes (J. G. Verwer, E. J. Spee, J. G. Blom, W. Hundsdorfer, SIAM J. Sci. Comput. 20 (1999) 1456, from memory). Steps
/// follow the error estimate, so the result depends on nothing but its input.
/// </remarks>
internal static class StiffPair
{
    /// <summary>Largest error of one step, in the unit of the quantities, which should be near 1.</summary>
    private const double StepError = 1e-5;

    private const double Gamma = 1 - 0.70710678118654752;

    /// <summary>The pair at a time, s.</summary>
    internal readonly record struct Moment(double Time, double X, double Y);

    /// <summary>
    /// Follows the pair until X has fallen to a limit or the time is over; the last moment lies on the limit or at the end.
    /// </summary>
    public static List<Moment> Follow(Func<double, double, (double X, double Y)> slope, double x, double y, double limit, double longest)
    {
        var moments = new List<Moment> { new(0, x, y) };
        var step = 1e-5;
        while (moments[^1] is var now && now.X > limit && now.Time < longest)
        {
            var length = Math.Min(step, longest - now.Time);
            var (next, error) = Step(slope, now, length);
            step = length * Math.Clamp(0.9 * Math.Sqrt(StepError / error), 0.2, 4);
            if (error > StepError) continue;
            moments.Add(next.X > limit ? next : Crossing(slope, now, next, limit));
        }
        return moments;
    }

    /// <summary>The moment X reaches the limit, by halving the step that passed it.</summary>
    private static Moment Crossing(Func<double, double, (double X, double Y)> slope, Moment before, Moment after, double limit)
    {
        var (low, high) = (0.0, after.Time - before.Time);
        for (var i = 0; i < 45; i++)
        {
            var middle = (low + high) / 2;
            if (Step(slope, before, middle).Next.X > limit) low = middle;
            else high = middle;
        }
        return Step(slope, before, high).Next with { X = limit };
    }

    private static (Moment Next, double Error) Step(Func<double, double, (double X, double Y)> slope, Moment now, double length)
    {
        const double nudge = 1e-7;
        var here = slope(now.X, now.Y);
        var (right, up) = (slope(now.X + nudge, now.Y), slope(now.X, now.Y + nudge));
        var scale = Gamma * length / nudge;
        var (a, b) = (1 - scale * (right.X - here.X), -scale * (up.X - here.X));
        var (c, d) = (-scale * (right.Y - here.Y), 1 - scale * (up.Y - here.Y));
        var determinant = a * d - b * c;
        (double X, double Y) Solve(double p, double q) => ((d * p - b * q) / determinant, (a * q - c * p) / determinant);

        var first = Solve(here.X, here.Y);
        var there = slope(now.X + length * first.X, now.Y + length * first.Y);
        var second = Solve(there.X - 2 * first.X, there.Y - 2 * first.Y);
        var error = length / 2 * Math.Max(Math.Abs(first.X + second.X), Math.Abs(first.Y + second.Y));
        return (new(
            now.Time + length,
            now.X + length / 2 * (3 * first.X + second.X),
            now.Y + length / 2 * (3 * first.Y + second.Y)), Math.Max(error, 1e-12));
    }
}
