using System.Collections.Immutable;

namespace BuckGen.Physics.Air;

/// <summary>What all vents together draw, by the pressure ratio across them.</summary>
internal sealed class HoleFlow
{
    /// <summary>
    /// From this ratio up to 1 the flow falls evenly to nothing, as the slow flow of small pressure differences does; the square
    /// root of the nozzle relation would end in an infinite slope there. It changes times by less than 0.1 %.
    /// </summary>
    private const double LinearRatio = 0.999;

    private readonly ImmutableArray<HoleGroup> groups;

    /// <param name="holes">The vents.</param>
    /// <param name="spec">Temperature, discharge coefficient, friction.</param>
    /// <param name="factor">Counts every hole this many times.</param>
    public HoleFlow(IEnumerable<VentHoles> holes, AirFlowSpec spec, double factor = 1)
    {
        var speed = Math.Sqrt(DryAir.PressureOverDensity(spec.Temperature));
        groups = [.. holes.Where(h => h.Count > 0).Select(h => GroupOf(h, spec, factor * speed))];
    }

    private sealed record HoleGroup(
        double AreaTimesSpeed, double Resistance, double ChokedInletMach, double ChokedFlow, double CriticalRatio, double FlowAtLinearRatio);

    /// <summary>Volume drawn, L/s, measured at the pressure before the holes.</summary>
    /// <param name="ratio">Pressure behind the holes over that before them; a little above 1 gives a little flow back.</param>
    public double VolumeFlow(double ratio) => groups.Sum(g => g.AreaTimesSpeed * FlowFunction(g, ratio));

    /// <summary>True when a deeper vacuum would draw no more through any of the holes.</summary>
    public bool IsChoked(double ratio) => groups.All(g => ratio <= g.CriticalRatio);

    private static HoleGroup GroupOf(VentHoles holes, AirFlowSpec spec, double speed)
    {
        var resistance = LongHole.Resistance(holes.Diameter, holes.Length, spec.WallFriction);
        var squareMillimetres = holes.Count * Math.PI / 4 * holes.Diameter * holes.Diameter;
        return new(
            squareMillimetres * 1e-3 * spec.DischargeCoefficient * speed,
            resistance,
            LongHole.ChokedInletMach(resistance),
            LongHole.FlowFunction(0, resistance),
            LongHole.CriticalPressureRatio(resistance),
            LongHole.FlowFunction(LinearRatio, resistance));
    }

    private static double FlowFunction(HoleGroup group, double ratio)
    {
        if (ratio <= group.CriticalRatio) return group.ChokedFlow;
        return ratio < LinearRatio
            ? LongHole.FlowFunction(ratio, group.Resistance, group.ChokedInletMach)
            : group.FlowAtLinearRatio * (1 - ratio) / (1 - LinearRatio);
    }
}
