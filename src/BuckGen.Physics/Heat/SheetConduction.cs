using System.Collections.Immutable;

namespace BuckGen.Physics.Heat;

/// <summary>Follows the temperatures through a sheet between two faces, step by step.</summary>
internal sealed class SheetConduction
{
    private const int MomentCount = 21;

    /// <summary>Nearer to rest than this, degrees C, the sheet is taken to be at rest.</summary>
    private const double Rest = 0.001;

    private readonly FlatSheet sheet;
    private readonly SheetFace first;
    private readonly SheetFace second;
    private readonly SheetGrid grid;
    private readonly double stepError;

    /// <param name="sheet">The sheet.</param>
    /// <param name="first">What happens at its first face.</param>
    /// <param name="second">What happens at its second face.</param>
    /// <param name="intervals">Number of intervals it is cut into; the error falls with its square.</param>
    /// <param name="stepError">Largest first-order error of one step, degrees C.</param>
    public SheetConduction(FlatSheet sheet, SheetFace first, SheetFace second, int intervals = 120, double stepError = 0.01)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        sheet.Validate();
        first.Validate();
        second.Validate();
        (this.sheet, this.first, this.second, this.stepError) = (sheet, first, second, stepError);
        grid = new(sheet, intervals);
    }

    /// <summary>Until the gap to what is wanted is closed.</summary>
    public SheetHeatResult Until(double start, Func<SheetTemperatures, double> gap, double longest)
    {
        var steady = SteadySheet.Of(sheet, first, second, start);
        // What it only nears for ever it never reaches: not by rounding, nor by the error of a step. It may pass it on the way,
        // though.
        var restsShort = gap(grid.Summary(grid.Even(start))) > 0 && steady is { } rest && gap(rest) > -1e-6;
        double Left(SheetTemperatures now) => gap(now) is var g && restsShort && g > -stepError ? Math.Max(g, Rest) : g;
        var moments = Follow(start, Left, longest, restsShort ? steady : null);
        var reached = Left(moments[^1].Temperatures) <= 0;
        return new()
        {
            Outcome = reached ? HeatOutcome.Reached : restsShort ? HeatOutcome.Never : HeatOutcome.TooSlow,
            Seconds = reached ? moments[^1].Seconds : null,
            End = moments[^1].Temperatures,
            Steady = steady,
            Moments = Evenly(moments),
        };
    }

    /// <summary>Every step until the gap is closed, the sheet rests short of it, or the time is over.</summary>
    internal List<SheetMoment> Follow(double start, Func<SheetTemperatures, double> gap, double longest, SheetTemperatures? rest = null)
    {
        var now = grid.Even(start);
        var moments = new List<SheetMoment> { new(0, grid.Summary(now)) };
        // Small against the time the thinnest slice takes to even out; the error then sets the pace.
        var step = Math.Min(longest, 1e-6 * sheet.Thickness * sheet.Thickness / sheet.Material.Diffusivity);
        while (moments[^1] is var (time, temperatures) && gap(temperatures) > 0 && time < longest && !IsAtRest(temperatures, rest))
        {
            var length = Math.Min(step, longest - time);
            var (next, error) = HeatStep.Take(now, length, grid, first, second);
            step = length * Math.Clamp(0.9 * Math.Sqrt(stepError / Math.Max(error, 1e-12)), 0.2, 4);
            if (error > stepError) continue;
            if (gap(grid.Summary(next)) <= 0) (length, next) = Crossing(now, length, gap);
            now = next;
            // The end exactly, so that a sum of steps can't fall short of it by a rounding.
            moments.Add(new(length == longest - time ? longest : time + length, grid.Summary(now)));
        }
        return moments;
    }

    /// <summary>The shortest step that closes the gap, by halving the step that passed it.</summary>
    private (double Length, double[] Next) Crossing(double[] now, double length, Func<SheetTemperatures, double> gap)
    {
        var (low, high) = (0.0, length);
        for (var i = 0; i < 45; i++)
        {
            var middle = (low + high) / 2;
            if (gap(grid.Summary(HeatStep.Take(now, middle, grid, first, second).Next)) > 0) low = middle;
            else high = middle;
        }
        return (high, HeatStep.Take(now, high, grid, first, second).Next);
    }

    /// <summary>At rest the temperatures lie on a straight line, so three of them tell.</summary>
    private static bool IsAtRest(SheetTemperatures now, SheetTemperatures? rest) => rest is { } r
        && Math.Abs(now.First - r.First) < Rest && Math.Abs(now.Core - r.Core) < Rest && Math.Abs(now.Second - r.Second) < Rest;

    private static ImmutableArray<SheetMoment> Evenly(List<SheetMoment> moments)
    {
        if (moments.Count == 1) return [moments[0]];
        var series = ImmutableArray.CreateBuilder<SheetMoment>(MomentCount);
        var next = 1;
        for (var i = 0; i < MomentCount; i++)
        {
            var time = moments[^1].Seconds * (i / (MomentCount - 1.0));
            while (next < moments.Count - 1 && moments[next].Seconds < time) next++;
            var (a, b) = (moments[next - 1], moments[next]);
            series.Add(new(time, SheetTemperatures.Between(a.Temperatures, b.Temperatures, (time - a.Seconds) / (b.Seconds - a.Seconds))));
        }
        return series.MoveToImmutable();
    }
}
