using System.Collections.Immutable;

namespace BuckGen.Physics.Air;

/// <summary>How long the air under a sheet takes to leave through the vents.</summary>
/// <remarks>
/// While the sheet sinks it is soft: the air below it stays at about ambient pressure and its volume is swept through the vents
/// into the reservoir, whose pressure rises and is lowered by the pump (a constant volume per second). Should the sheet not give
/// at all, the volume stays and its pressure falls: the rigid case. Temperatures stay even in both. Through choked vents into a
/// reservoir that stays deep enough, the times are V/Q and V/Q·ln(p1/p2), where Q is the volume the vents draw; in between they
/// are followed step by step, to 0.1 %.
/// </remarks>
internal static class DrawDown
{
    /// <summary>Longest time that is followed, s: any sheet is cold by then.</summary>
    public const double MaxTime = 60;

    /// <summary>Most air that is followed, L: a hall of 1 km by 1 km by 1 m.</summary>
    public const double MaxVolume = 1e9;

    /// <summary>Less air than this, L, a cubic millimetre, is gone at once.</summary>
    private const double MinVolume = 1e-6;

    private const int SampleCount = 21;

    /// <summary>Follows the air until the form is drawn.</summary>
    /// <param name="volume">Air under the sheet at the start, L, 0 to <see cref="MaxVolume"/>.</param>
    /// <param name="holes">The vents; without any the form is never drawn.</param>
    /// <param name="spec">Pump, reservoir, air.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static DrawDownResult Simulate(double volume, IReadOnlyList<VentHoles> holes, AirFlowSpec spec)
    {
        ArgumentNullException.ThrowIfNull(holes);
        ArgumentNullException.ThrowIfNull(spec);
        CheckVolume(volume);
        spec.Validate();
        foreach (var group in holes) group.Validate();

        if (volume < MinVolume) return Immediate(spec);
        var flow = new HoleFlow(holes, spec);
        var sinking = SinkingStates(volume, flow, spec);
        return new()
        {
            Seconds = TimeOf(sinking),
            RigidSeconds = TimeOf(RigidStates(volume, flow, spec)),
            ChokedShare = holes.Any(h => h.Count > 0) ? ChokedShare(sinking, flow) : 0,
            Bottleneck = BottleneckOf(volume, holes, spec),
            Samples = Resample(sinking, volume, spec),
        };
    }

    /// <summary>
    /// The least number of equal vents that draws the form in the wanted time; null when no number does, for want of pump and
    /// reservoir.
    /// </summary>
    /// <param name="volume">Air under the sheet at the start, L, 0 to <see cref="MaxVolume"/>.</param>
    /// <param name="diameter">Bore of the vents, mm, 0.05 to 100.</param>
    /// <param name="length">Their length, mm, 0 to 1000.</param>
    /// <param name="spec">Pump, reservoir, air, wanted time.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static int? MinHoleCount(double volume, double diameter, double length, AirFlowSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        CheckVolume(volume);
        spec.Validate();
        new VentHoles(diameter, length, 0).Validate();

        if (volume < MinVolume) return 0;

        bool Suffices(int count) =>
            SinkingStates(volume, new([new(diameter, length, count)], spec), spec, spec.WantedTime)[^1].X <= 1 - spec.SweptShare;
        var (tooFew, enough) = (0, VentHoles.MaxCount);
        if (!Suffices(enough)) return null;
        while (enough - tooFew > 1)
        {
            var middle = (tooFew + enough) / 2;
            if (Suffices(middle)) enough = middle;
            else tooFew = middle;
        }
        return enough;
    }

    /// <summary>There is hardly any air: the form is drawn when the valve opens.</summary>
    private static DrawDownResult Immediate(AirFlowSpec spec) => new()
    {
        Seconds = 0, RigidSeconds = 0, ChokedShare = 0, Bottleneck = AirBottleneck.Holes, Samples = [new(0, 0, spec.ReservoirPressure)],
    };

    /// <summary>X: share of the volume left. Y: pressure of the reservoir over ambient pressure.</summary>
    private static List<RosenbrockSolver.State> SinkingStates(double volume, HoleFlow flow, AirFlowSpec spec, double maxTime = MaxTime) => RosenbrockSolver.Integrate(
        (left, reservoir) =>
        {
            var drawn = flow.VolumeFlow(reservoir);
            return (-drawn / volume, ReservoirRate(drawn, reservoir, spec));
        },
        1, spec.ReservoirPressure / spec.AmbientPressure, 1 - spec.SweptShare, maxTime);

    /// <summary>X and Y: pressures under the sheet and in the reservoir, over ambient pressure.</summary>
    private static List<RosenbrockSolver.State> RigidStates(double volume, HoleFlow flow, AirFlowSpec spec) => RosenbrockSolver.Integrate(
        (under, reservoir) =>
        {
            var drawn = under * flow.VolumeFlow(reservoir / under);
            return (-drawn / volume, ReservoirRate(drawn, reservoir, spec));
        },
        1, spec.ReservoirPressure / spec.AmbientPressure, spec.FormedPressure / spec.AmbientPressure, MaxTime);

    private static double ReservoirRate(double drawn, double pressure, AirFlowSpec spec) =>
        spec.ReservoirVolume is { } volume ? (drawn - (spec.PumpDisplacement ?? 0) * pressure) / volume : 0;

    private static double? TimeOf(List<RosenbrockSolver.State> states) => states[^1].Time < MaxTime ? states[^1].Time : null;

    private static double ChokedShare(List<RosenbrockSolver.State> states, HoleFlow flow) =>
        states.Zip(states.Skip(1)).Where(m => flow.IsChoked(m.First.Y) && flow.IsChoked(m.Second.Y)).Sum(m => m.Second.Time - m.First.Time)
        / states[^1].Time;

    private static AirBottleneck BottleneckOf(double volume, IReadOnlyList<VentHoles> holes, AirFlowSpec spec)
    {
        var twice = new List<(AirBottleneck Bottleneck, RosenbrockSolver.State End)>
        {
            (AirBottleneck.Holes, SinkingStates(volume, new(holes, spec, factor: 2), spec)[^1]),
        };
        if (spec.ReservoirVolume is { } reservoir)
        {
            var flow = new HoleFlow(holes, spec);
            if (spec.PumpDisplacement is { } pump)
                twice.Add((AirBottleneck.Pump, SinkingStates(volume, flow, spec with { PumpDisplacement = 2 * pump })[^1]));
            twice.Add((AirBottleneck.Reservoir, SinkingStates(volume, flow, spec with { ReservoirVolume = 2 * reservoir })[^1]));
        }
        // Where none of them is done in time, the one that sweeps most.
        return twice.OrderBy(t => t.End.Time).ThenBy(t => t.End.X).First().Bottleneck;
    }

    private static ImmutableArray<DrawDownSample> Resample(List<RosenbrockSolver.State> states, double volume, AirFlowSpec spec)
    {
        var samples = ImmutableArray.CreateBuilder<DrawDownSample>(SampleCount);
        var next = 1;
        for (var i = 0; i < SampleCount; i++)
        {
            var time = states[^1].Time * (i / (SampleCount - 1.0));
            while (next < states.Count - 1 && states[next].Time < time) next++;
            var (a, b) = (states[next - 1], states[next]);
            var share = (time - a.Time) / (b.Time - a.Time);
            samples.Add(new(time, double.Lerp(a.X, b.X, share) * volume, double.Lerp(a.Y, b.Y, share) * spec.AmbientPressure));
        }
        return samples.MoveToImmutable();
    }

    private static void CheckVolume(double volume) => Bound.Check(volume, 0, MaxVolume, "volume under the sheet", " L");
}
