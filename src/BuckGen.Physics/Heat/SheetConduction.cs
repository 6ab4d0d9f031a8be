using System.Collections.Immutable;

namespace BuckGen.Physics.Heat;

/// <summary>Follows the temperatures through a sheet between two faces, step by step.</summary>
internal sealed class SheetConduction
{
    private const int SampleCount = 21;

    /// <summary>Nearer to rest than this, degrees C, the sheet is taken to be at rest.</summary>
    private const double SteadyTolerance = 0.001;

    private readonly FlatSheet sheet;
    private readonly SheetFace first;
    private readonly SheetFace second;
    private readonly SheetGrid grid;
    private readonly double stepTolerance;

    /// <param name="sheet">The sheet.</param>
    /// <param name="first">What happens at its first face.</param>
    /// <param name="second">What happens at its second face.</param>
    /// <param name="intervals">Number of intervals it is cut into; the error falls with its square.</param>
    /// <param name="stepTolerance">Largest first-order error of one step, degrees C.</param>
    public SheetConduction(FlatSheet sheet, SheetFace first, SheetFace second, int intervals = 120, double stepTolerance = 0.01)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        sheet.Validate();
        first.Validate();
        second.Validate();
        (this.sheet, this.first, this.second, this.stepTolerance) = (sheet, first, second, stepTolerance);
        grid = new(sheet, intervals);
    }

    /// <summary>Until the gap to what is wanted is closed.</summary>
    public SheetHeatResult RunUntil(double start, Func<SheetTemperatures, double> remaining, double maxTime)
    {
        var steady = SteadySheet.Solve(sheet, first, second, start);
        // What it only nears for ever it never reaches: not by rounding, nor by the error of a step. It may pass it on the way,
        // though.
        var staysShort = remaining(grid.Summarize(grid.Uniform(start))) > 0 && steady is { } steadyState && remaining(steadyState) > -1e-6;
        double RemainingAt(SheetTemperatures now) => remaining(now) is var g && staysShort && g > -stepTolerance ? Math.Max(g, SteadyTolerance) : g;
        var states = Integrate(start, RemainingAt, maxTime, staysShort ? steady : null);
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

    /// <summary>Every step until the gap is closed, the sheet rests short of it, or the time is over.</summary>
    internal List<TemperatureSample> Integrate(double start, Func<SheetTemperatures, double> remaining, double maxTime, SheetTemperatures? steady = null)
    {
        var now = grid.Uniform(start);
        var states = new List<TemperatureSample> { new(0, grid.Summarize(now)) };
        // Small against the time the thinnest slice takes to even out; the error then sets the pace.
        var step = Math.Min(maxTime, 1e-6 * sheet.Thickness * sheet.Thickness / sheet.Material.Diffusivity);
        while (states[^1] is var (time, temperatures) && remaining(temperatures) > 0 && time < maxTime && !IsSteady(temperatures, steady))
        {
            var stepSize = Math.Min(step, maxTime - time);
            var (next, error) = HeatStep.Take(now, stepSize, grid, first, second);
            step = stepSize * Math.Clamp(0.9 * Math.Sqrt(stepTolerance / Math.Max(error, 1e-12)), 0.2, 4);
            if (error > stepTolerance) continue;
            if (remaining(grid.Summarize(next)) <= 0) (stepSize, next) = LimitCrossing(now, stepSize, remaining);
            now = next;
            // The end exactly, so that a sum of steps can't fall short of it by a rounding.
            states.Add(new(stepSize == maxTime - time ? maxTime : time + stepSize, grid.Summarize(now)));
        }
        return states;
    }

    /// <summary>The shortest step that closes the gap, by halving the step that passed it.</summary>
    private (double Length, double[] Next) LimitCrossing(double[] now, double stepSize, Func<SheetTemperatures, double> remaining)
    {
        var (low, high) = (0.0, stepSize);
        for (var i = 0; i < 45; i++)
        {
            var middle = (low + high) / 2;
            if (remaining(grid.Summarize(HeatStep.Take(now, middle, grid, first, second).Next)) > 0) low = middle;
            else high = middle;
        }
        return (high, HeatStep.Take(now, high, grid, first, second).Next);
    }

    /// <summary>At rest the temperatures lie on a straight line, so three of them tell.</summary>
    private static bool IsSteady(SheetTemperatures now, SheetTemperatures? steady) => steady is { } r
        && Math.Abs(now.First - r.First) < SteadyTolerance && Math.Abs(now.Core - r.Core) < SteadyTolerance && Math.Abs(now.Second - r.Second) < SteadyTolerance;

    private static ImmutableArray<TemperatureSample> Resample(List<TemperatureSample> states)
    {
        if (states.Count == 1) return [states[0]];
        var samples = ImmutableArray.CreateBuilder<TemperatureSample>(SampleCount);
        var next = 1;
        for (var i = 0; i < SampleCount; i++)
        {
            var time = states[^1].Seconds * (i / (SampleCount - 1.0));
            while (next < states.Count - 1 && states[next].Seconds < time) next++;
            var (a, b) = (states[next - 1], states[next]);
            samples.Add(new(time, SheetTemperatures.Lerp(a.Temperatures, b.Temperatures, (time - a.Seconds) / (b.Seconds - a.Seconds))));
        }
        return samples.MoveToImmutable();
    }
}
