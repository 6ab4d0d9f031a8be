using System.Collections.Immutable;

namespace BuckGen.Physics.Heat;

/// <summary>
/// Transient heat conduction through the thickness of a sheet, from face to face, or of a sheet and the body under it.
/// </summary>
internal sealed class SheetConduction
{
    /// <summary>Largest difference from the steady state at which the sheet counts as steady, degrees C.</summary>
    private const double SteadyTolerance = 0.001;

    private readonly FlatSheet sheet;
    private readonly SheetFace first;
    private readonly SheetFace second;
    private readonly SheetBacking? backing;
    private readonly SheetGrid grid;
    private readonly AdaptiveStep control;

    /// <param name="sheet">The sheet.</param>
    /// <param name="first">Heat exchange at its first face.</param>
    /// <param name="second">Heat exchange at its second face.</param>
    /// <param name="intervals">Number of intervals through the thickness; the error falls with its square.</param>
    /// <param name="stepTolerance">Largest first-order error of one step, degrees C.</param>
    public SheetConduction(FlatSheet sheet, SheetFace first, SheetFace second, int intervals = 120, double stepTolerance = 0.01)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        sheet.Validate();
        first.Validate();
        second.Validate();
        (this.sheet, this.first, this.second, control) = (sheet, first, second, new(stepTolerance));
        grid = new(sheet, intervals);
    }

    /// <param name="sheet">The sheet.</param>
    /// <param name="backing">The body under its first face.</param>
    /// <param name="second">Heat exchange at the second face of the sheet.</param>
    /// <param name="intervals">Number of intervals through each of them.</param>
    /// <param name="stepTolerance">Largest first-order error of one step, degrees C.</param>
    public SheetConduction(
        FlatSheet sheet, SheetBacking backing, SheetFace second, int intervals = 120, double stepTolerance = 0.01)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(backing);
        ArgumentNullException.ThrowIfNull(second);
        sheet.Validate();
        backing.Validate();
        second.Validate();
        (this.sheet, this.backing, first, this.second) = (sheet, backing, backing.FarFace, second);
        control = new(stepTolerance);
        grid = new(sheet, intervals, backing);
    }

    /// <summary>The points and cells of sheet and body.</summary>
    internal SheetGrid Grid => grid;

    /// <summary>Integrates until the target is reached.</summary>
    /// <param name="start">Uniform temperature of the sheet at the start, degrees C.</param>
    /// <param name="remaining">Remaining difference to the target, degrees C; 0 or less when it is reached.</param>
    /// <param name="maxTime">Longest time that is simulated, s.</param>
    /// <param name="body">Uniform temperature of the body at the start, degrees C; unused without one.</param>
    public SheetHeatResult RunUntil(
        double start, Func<SheetTemperatures, double> remaining, double maxTime, double body = double.NaN)
    {
        var begin = grid.Place(start, Enumerable.Repeat(body, grid.FirstOfSheet));
        var steady = SteadySheet.Solve(sheet, first, second, backing is null ? start : grid.Mixed(begin), backing);
        // A target that the steady state only just reaches is approached without end. Neither rounding nor the error of a step
        // may count as reaching it; an overshoot on the way may.
        var staysShort = remaining(grid.Summarize(begin)) > 0 && steady is { } steadyState
            && remaining(steadyState) > -1e-6;
        double RemainingAt(SheetTemperatures now) => remaining(now) is var g && staysShort && g > -control.Tolerance
            ? Math.Max(g, SteadyTolerance) : g;
        // A body may still be far from steady when the sheet on it passes the temperatures of its own steady state.
        var states = Integrate(begin, RemainingAt, maxTime, staysShort && backing is null ? steady : null).States;
        var reached = RemainingAt(states[^1].Temperatures) <= 0;
        return new()
        {
            Outcome = reached ? HeatOutcome.Reached : staysShort ? HeatOutcome.Never : HeatOutcome.TooSlow,
            Seconds = reached ? states[^1].Seconds : null,
            End = states[^1].Temperatures,
            Steady = steady,
            Samples = Resample(states),
        };
    }

    /// <summary>All steps from a uniform temperature until the target is reached or the time is over.</summary>
    internal List<TemperatureSample> Integrate(double start, Func<SheetTemperatures, double> remaining, double maxTime) =>
        Integrate(grid.Uniform(start), remaining, maxTime).States;

    /// <summary>
    /// All steps until the target is reached, the sheet is steady or the time is over; and the temperatures of all points then,
    /// degrees C.
    /// </summary>
    internal (List<TemperatureSample> States, double[] End) Integrate(
        double[] start, Func<SheetTemperatures, double> remaining, double maxTime, SheetTemperatures? steady = null)
    {
        var now = start;
        var states = new List<TemperatureSample> { new(0, grid.Summarize(now)) };
        // Short compared with the diffusion time of the thinnest slice; the error then controls the step size.
        var step = Math.Min(maxTime, 1e-6 * sheet.Thickness * sheet.Thickness / sheet.Material.Diffusivity);
        while (states[^1] is var (time, temperatures) && remaining(temperatures) > 0 && time < maxTime
            && !IsSteady(temperatures, steady))
        {
            var stepSize = Math.Min(step, maxTime - time);
            var (next, error) = HeatStep.Take(now, stepSize, grid, first, second);
            step = control.Next(stepSize, error);
            if (control.Rejects(error)) continue;
            if (remaining(grid.Summarize(next)) <= 0) (stepSize, next) = LimitCrossing(now, stepSize, remaining);
            now = next;
            // The end exactly, so that rounding of the sum of steps cannot make it fall short.
            states.Add(new(stepSize == maxTime - time ? maxTime : time + stepSize, grid.Summarize(now)));
        }
        return (states, now);
    }

    /// <summary>The shortest step that reaches the target, by halving the step that passed it.</summary>
    private (double Length, double[] Next) LimitCrossing(double[] now, double stepSize, Func<SheetTemperatures, double> remaining)
    {
        double[] After(double size) => HeatStep.Take(now, size, grid, first, second).Next;
        var shortest = AdaptiveStep.ShortestTo(stepSize, size => remaining(grid.Summarize(After(size))) > 0);
        return (shortest, After(shortest));
    }

    /// <summary>In the steady state the temperature is linear, so that three points are enough.</summary>
    private static bool IsSteady(SheetTemperatures now, SheetTemperatures? steady) => steady is { } r
        && Math.Abs(now.First - r.First) < SteadyTolerance && Math.Abs(now.Core - r.Core) < SteadyTolerance
        && Math.Abs(now.Second - r.Second) < SteadyTolerance;

    private static ImmutableArray<TemperatureSample> Resample(List<TemperatureSample> states) => states.Count == 1
        ? [states[0]]
        : Resampling.Evenly(
            states, s => s.Seconds,
            (time, a, b, share) => new TemperatureSample(time, SheetTemperatures.Lerp(a.Temperatures, b.Temperatures, share)));
}
