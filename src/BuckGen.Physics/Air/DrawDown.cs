using System.Collections.Immutable;

namespace BuckGen.Physics.Air;

/// <summary>How long the air under a sheet takes to leave through the vents.</summary>
/// <remarks>
/// <para>
/// The sinking case: the sheet is soft, so the air below it stays at about ambient pressure while its volume is swept through the
/// vents into the reservoir. The pressure of the reservoir rises by that air and falls by the pump, which removes a constant
/// volume per second. The rigid case: the sheet does not move at all, so the volume stays constant and its pressure falls. Real
/// forming lies between the two. Temperatures are constant in both.
/// </para>
/// <para>
/// While the vents are choked and the reservoir stays deep enough, the times are V/Q and V/Q·ln(p1/p2), where Q is the volume
/// flow through the vents (mass balance). Otherwise the balance of both volumes is integrated numerically, to 0.1 %. The flow
/// through the vents is that of <see cref="LongHole"/>.
/// </para>
/// </remarks>
public static class DrawDown
{
    /// <summary>Longest time that is simulated, s: any sheet is cold by then.</summary>
    public const double MaxTime = 60;

    /// <summary>Largest volume that is simulated, L: a hall of 1 km by 1 km by 1 m.</summary>
    public const double MaxVolume = 1e9;

    /// <summary>A smaller volume than this, L, a cubic millimetre, counts as drawn at once.</summary>
    private const double MinVolume = 1e-6;

    /// <summary>Simulates the draw-down until the form is drawn.</summary>
    /// <param name="volume">Air under the sheet at the start, L, 0 to <see cref="MaxVolume"/>.</param>
    /// <param name="holes">The vents; without any the form is never drawn.</param>
    /// <param name="spec">Pump, reservoir and air.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
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

    /// <summary>The smallest number of equal vents that draws the form within the wanted time.</summary>
    /// <param name="volume">Air under the sheet at the start, L, 0 to <see cref="MaxVolume"/>.</param>
    /// <param name="diameter">Bore of the vents, mm, 0.05 to 100.</param>
    /// <param name="length">Their length, mm, 0 to 1000.</param>
    /// <param name="spec">Pump, reservoir, air and wanted time.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    /// <returns>Null when no number of vents suffices, because the pump or the reservoir is too small.</returns>
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

    /// <summary>The result for hardly any air: the form is drawn when the valve opens.</summary>
    private static DrawDownResult Immediate(AirFlowSpec spec) => new()
    {
        Seconds = 0,
        RigidSeconds = 0,
        ChokedShare = 0,
        Bottleneck = AirBottleneck.Holes,
        Samples = [new(0, 0, spec.ReservoirPressure)],
    };

    /// <summary>X: remaining share of the volume. Y: pressure of the reservoir over ambient pressure.</summary>
    private static List<RosenbrockSolver.State> SinkingStates(
        double volume, HoleFlow flow, AirFlowSpec spec, double maxTime = MaxTime) => RosenbrockSolver.Integrate(
        (left, reservoir) =>
        {
            var drawn = flow.VolumeFlow(reservoir);
            return (-drawn / volume, ReservoirRate(drawn, reservoir, spec));
        },
        1, spec.ReservoirPressure / spec.AmbientPressure, 1 - spec.SweptShare, maxTime);

    /// <summary>X and Y: pressures under the sheet and in the reservoir over ambient pressure.</summary>
    private static List<RosenbrockSolver.State> RigidStates(double volume, HoleFlow flow, AirFlowSpec spec) =>
        RosenbrockSolver.Integrate(
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
        states.Zip(states.Skip(1)).Where(m => flow.IsChoked(m.First.Y) && flow.IsChoked(m.Second.Y))
            .Sum(m => m.Second.Time - m.First.Time)
        / states[^1].Time;

    private static AirBottleneck BottleneckOf(double volume, IReadOnlyList<VentHoles> holes, AirFlowSpec spec)
    {
        var doubled = new List<(AirBottleneck Bottleneck, RosenbrockSolver.State End)>
        {
            (AirBottleneck.Holes, SinkingStates(volume, new(holes, spec, factor: 2), spec)[^1]),
        };
        if (spec.ReservoirVolume is { } reservoir)
        {
            var flow = new HoleFlow(holes, spec);
            if (spec.PumpDisplacement is { } pump)
                doubled.Add((AirBottleneck.Pump, SinkingStates(volume, flow, spec with { PumpDisplacement = 2 * pump })[^1]));
            var larger = spec with { ReservoirVolume = 2 * reservoir };
            doubled.Add((AirBottleneck.Reservoir, SinkingStates(volume, flow, larger)[^1]));
        }
        // If none of them finishes in time, the one that sweeps most decides.
        return doubled.OrderBy(t => t.End.Time).ThenBy(t => t.End.X).First().Bottleneck;
    }

    private static ImmutableArray<DrawDownSample> Resample(
        List<RosenbrockSolver.State> states, double volume, AirFlowSpec spec) => Resampling.Evenly(
        states, s => s.Time,
        (time, a, b, share) => new DrawDownSample(
            time, double.Lerp(a.X, b.X, share) * volume, double.Lerp(a.Y, b.Y, share) * spec.AmbientPressure));

    private static void CheckVolume(double volume) => Bound.Check(volume, 0, MaxVolume, "volume under the sheet", " L");
}
