using System.Collections.Immutable;

namespace BuckGen.Physics.Air;

/// <summary>Volume flow through all vents together, as a function of the pressure ratio across them.</summary>
internal sealed class HoleFlow
{
    /// <summary>
    /// From this pressure ratio up to 1 the flow falls linearly to zero, as laminar flow at small pressure differences does. The
    /// nozzle relation would end in an infinite slope there. This changes times by less than 0.1 %.
    /// </summary>
    private const double LinearRatio = 0.999;

    private readonly ImmutableArray<HoleGroup> groups;

    /// <param name="holes">The vents.</param>
    /// <param name="spec">Temperature, discharge coefficient and friction.</param>
    /// <param name="factor">Factor on the number of holes.</param>
    public HoleFlow(IEnumerable<VentHoles> holes, AirFlowSpec spec, double factor = 1)
    {
        var speed = Math.Sqrt(DryAir.PressureOverDensity(spec.Temperature));
        groups = [.. holes.Where(h => h.Count > 0).Select(h => GroupOf(h, spec, factor * speed))];
    }

    private sealed record HoleGroup(
        double AreaTimesSpeed, double Resistance, double ChokedInletMach, double ChokedFlow, double CriticalRatio,
        double FlowAtLinearRatio);

    /// <summary>Volume flow at the pressure before the holes, L/s.</summary>
    /// <param name="ratio">Pressure behind the holes over that before them; slightly above 1 it gives a small flow back.</param>
    public double VolumeFlow(double ratio) => groups.Sum(g => g.AreaTimesSpeed * FlowFunction(g, ratio));

    /// <summary>True when all holes are choked, so that a deeper vacuum would not draw more.</summary>
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
