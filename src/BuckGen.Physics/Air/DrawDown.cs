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
    public const double Longest = 60;

    /// <summary>Most air that is followed, L: a hall of 1 km by 1 km by 1 m.</summary>
    public const double LargestVolume = 1e9;

    /// <summary>Less air than this, L, a cubic millimetre, is gone at once.</summary>
    private const double LeastVolume = 1e-6;

    private const int MomentCount = 21;

    /// <summary>Follows the air until the form is drawn.</summary>
    /// <param name="volume">Air under the sheet at the start, L, 0 to <see cref="LargestVolume"/>.</param>
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

        if (volume < LeastVolume) return AtOnce(spec);
        var flow = new HoleFlow(holes, spec);
        var sinking = Sinking(volume, flow, spec);
        return new()
        {
            Seconds = TimeOf(sinking),
            RigidSeconds = TimeOf(Rigid(volume, flow, spec)),
            ChokedShare = holes.Any(h => h.Count > 0) ? ChokedShare(sinking, flow) : 0,
            Limit = LimitOf(volume, holes, spec),
            Moments = Evenly(sinking, volume, spec),
        };
    }

    /// <summary>
    /// The least number of equal vents that draws the form in the wanted time; null when no number does, for want of pump and
    /// reservoir.
    /// </summary>
    /// <param name="volume">Air under the sheet at the start, L, 0 to <see cref="LargestVolume"/>.</param>
    /// <param name="diameter">Bore of the vents, mm, 0.05 to 100.</param>
    /// <param name="length">Their length, mm, 0 to 1000.</param>
    /// <param name="spec">Pump, reservoir, air, wanted time.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public static int? HolesNeeded(double volume, double diameter, double length, AirFlowSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        CheckVolume(volume);
        spec.Validate();
        new VentHoles(diameter, length, 0).Validate();

        if (volume < LeastVolume) return 0;

        bool Suffices(int count) =>
            Sinking(volume, new([new(diameter, length, count)], spec), spec, spec.WantedTime)[^1].X <= 1 - spec.SweptShare;
        var (tooFew, enough) = (0, VentHoles.Most);
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
    private static DrawDownResult AtOnce(AirFlowSpec spec) => new()
    {
        Seconds = 0, RigidSeconds = 0, ChokedShare = 0, Limit = AirLimit.Holes, Moments = [new(0, 0, spec.ReservoirPressure)],
    };

    /// <summary>X: share of the volume left. Y: pressure of the reservoir over ambient pressure.</summary>
    private static List<StiffPair.Moment> Sinking(double volume, HoleFlow flow, AirFlowSpec spec, double longest = Longest) => StiffPair.Follow(
        (left, reservoir) =>
        {
            var drawn = flow.At(reservoir);
            return (-drawn / volume, ReservoirSlope(drawn, reservoir, spec));
        },
        1, spec.ReservoirPressure / spec.AmbientPressure, 1 - spec.SweptShare, longest);

    /// <summary>X and Y: pressures under the sheet and in the reservoir, over ambient pressure.</summary>
    private static List<StiffPair.Moment> Rigid(double volume, HoleFlow flow, AirFlowSpec spec) => StiffPair.Follow(
        (under, reservoir) =>
        {
            var drawn = under * flow.At(reservoir / under);
            return (-drawn / volume, ReservoirSlope(drawn, reservoir, spec));
        },
        1, spec.ReservoirPressure / spec.AmbientPressure, spec.FormedPressure / spec.AmbientPressure, Longest);

    private static double ReservoirSlope(double drawn, double pressure, AirFlowSpec spec) =>
        spec.ReservoirVolume is { } volume ? (drawn - (spec.PumpDisplacement ?? 0) * pressure) / volume : 0;

    private static double? TimeOf(List<StiffPair.Moment> moments) => moments[^1].Time < Longest ? moments[^1].Time : null;

    private static double ChokedShare(List<StiffPair.Moment> moments, HoleFlow flow) =>
        moments.Zip(moments.Skip(1)).Where(m => flow.IsChoked(m.First.Y) && flow.IsChoked(m.Second.Y)).Sum(m => m.Second.Time - m.First.Time)
        / moments[^1].Time;

    private static AirLimit LimitOf(double volume, IReadOnlyList<VentHoles> holes, AirFlowSpec spec)
    {
        var twice = new List<(AirLimit Limit, StiffPair.Moment End)>
        {
            (AirLimit.Holes, Sinking(volume, new(holes, spec, factor: 2), spec)[^1]),
        };
        if (spec.ReservoirVolume is { } reservoir)
        {
            var flow = new HoleFlow(holes, spec);
            if (spec.PumpDisplacement is { } pump)
                twice.Add((AirLimit.Pump, Sinking(volume, flow, spec with { PumpDisplacement = 2 * pump })[^1]));
            twice.Add((AirLimit.Reservoir, Sinking(volume, flow, spec with { ReservoirVolume = 2 * reservoir })[^1]));
        }
        // Where none of them is done in time, the one that sweeps most.
        return twice.OrderBy(t => t.End.Time).ThenBy(t => t.End.X).First().Limit;
    }

    private static ImmutableArray<DrawDownMoment> Evenly(List<StiffPair.Moment> moments, double volume, AirFlowSpec spec)
    {
        var series = ImmutableArray.CreateBuilder<DrawDownMoment>(MomentCount);
        var next = 1;
        for (var i = 0; i < MomentCount; i++)
        {
            var time = moments[^1].Time * (i / (MomentCount - 1.0));
            while (next < moments.Count - 1 && moments[next].Time < time) next++;
            var (a, b) = (moments[next - 1], moments[next]);
            var share = (time - a.Time) / (b.Time - a.Time);
            series.Add(new(time, double.Lerp(a.X, b.X, share) * volume, double.Lerp(a.Y, b.Y, share) * spec.AmbientPressure));
        }
        return series.MoveToImmutable();
    }

    private static void CheckVolume(double volume) => Bound.Check(volume, 0, LargestVolume, "volume under the sheet", " L");
}
