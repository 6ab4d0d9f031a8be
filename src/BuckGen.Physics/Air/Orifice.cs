namespace BuckGen.Physics.Air;

/// <summary>Flow of air through a sharp-edged hole in thin material.</summary>
/// <remarks>
/// The isentropic nozzle relation times a discharge coefficient: mass flow = Cd·A·p·C(r)/√(R·T). Here p and T are the absolute
/// pressure and temperature before the hole and r is the pressure behind it over the pressure before it. C(r) grows as r falls
/// until the air reaches the speed of sound; below that ratio a deeper vacuum draws no more air: the hole is choked. Sources:
/// NACA Report 1135 (1953) for the isentropic relations; ISO 9300, whose critical flow function is C at choking (both from
/// memory; the tests derive the same numbers by numerical integration).
/// </remarks>
public static class Orifice
{
    /// <summary>Default discharge coefficient of a sharp-edged hole.</summary>
    /// <remarks>
    /// Commonly 0.61 to 0.65 for sharp edges at small pressure differences. Weisbach measured 0.563 to 0.788 for air and 0.81 to
    /// 0.84 for short tubes (Encyclopaedia Britannica, 11th edition, "Hydraulics", near § 64). 0.65 gives rather too little flow
    /// for vents.
    /// </remarks>
    public const double SharpEdgeCoefficient = 0.65;

    private const double G = DryAir.HeatRatio;

    /// <summary>Pressure ratio at and below which a sharp-edged hole is choked: 0.5283.</summary>
    public static double CriticalPressureRatio { get; } = Math.Pow(2 / (G + 1), G / (G - 1));

    /// <summary>C(r) of a choked hole: 0.6847.</summary>
    public static double CriticalFlowFunction { get; } = Math.Sqrt(G) * Math.Pow(2 / (G + 1), (G + 1) / (2 * (G - 1)));

    /// <summary>C(r): the mass flow of an ideal hole over A·p/√(R·T). Exact for a perfect gas.</summary>
    /// <param name="pressureRatio">Absolute pressure behind the hole over that before it, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double FlowFunction(double pressureRatio)
    {
        Bound.Check(pressureRatio, 0, 1, "pressure ratio");
        if (pressureRatio <= CriticalPressureRatio) return CriticalFlowFunction;
        return Math.Sqrt(2 * G / (G - 1) * (Math.Pow(pressureRatio, 2 / G) - Math.Pow(pressureRatio, (G + 1) / G)));
    }

    /// <summary>Mass flow of one hole, g/s.</summary>
    /// <param name="diameter">Diameter, mm, 0.01 to 100.</param>
    /// <param name="upstream">Absolute pressure before the hole, Pa, 1 to 1 000 000.</param>
    /// <param name="downstream">Absolute pressure behind it, Pa, 0 to <paramref name="upstream"/>.</param>
    /// <param name="temperature">Temperature of the air before it, degrees C, -50 to 300.</param>
    /// <param name="dischargeCoefficient">Discharge coefficient, 0.1 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double MassFlow(
        double diameter, double upstream, double downstream, double temperature,
        double dischargeCoefficient = SharpEdgeCoefficient) =>
        LongHole.MassFlow(diameter, length: 0, upstream, downstream, temperature, dischargeCoefficient);
}
