namespace BuckGen.Physics.Air;

/// <summary>
/// Flow of air through a hole that is long compared with its diameter, such as a pilot hole through a face layer.
/// </summary>
/// <remarks>
/// <para>
/// The bore is a pipe with wall friction and without heat transfer (Fanno flow) behind a nozzle; the result is multiplied by the
/// discharge coefficient of the entry. Source: A. H. Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, vol. 1,
/// chapter 6, from memory.
/// </para>
/// <para>
/// Behind a sharp entry the jet reattaches in a long bore (Weisbach's 0.81 to 0.84 instead of about 0.65). That gain is
/// neglected, so that a longer hole never passes more air and the flow is rather too small.
/// </para>
/// </remarks>
public static class LongHole
{
    /// <summary>Default Fanning friction factor (a quarter of Darcy's) of a bore through MDF or plywood.</summary>
    /// <remarks>
    /// Colebrook's formula gives 0.013 for a roughness of 0.02 mm in a 1 mm bore at a Reynolds number of 10 000, and 0.008 for a
    /// smooth bore. The roughness is an estimate, no source.
    /// </remarks>
    public const double WoodFriction = 0.0125;

    /// <summary>Dimensionless friction resistance 4fL/D of a bore; 0 for a sharp-edged hole in thin material.</summary>
    /// <param name="diameter">Diameter of the bore, mm, 0.01 to 100.</param>
    /// <param name="length">Length, mm, 0 to 1000.</param>
    /// <param name="friction">Fanning friction factor, 0 to 0.1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double Resistance(double diameter, double length, double friction = WoodFriction)
    {
        Bound.Check(diameter, 0.01, 100, "diameter of the hole", " mm");
        Bound.Check(length, 0, 1000, "length of the hole", " mm");
        Bound.Check(friction, 0, 0.1, "friction factor");
        return 4 * friction * length / diameter;
    }

    /// <summary>
    /// Flow of a choked long hole over that of a choked short one, 0 to 1. Its critical pressure ratio is smaller by the same
    /// factor.
    /// </summary>
    /// <param name="resistance">Resistance 4fL/D, 0 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double ChokedFlowFactor(double resistance)
    {
        Bound.Check(resistance, 0, 1e6, "resistance 4fL/D");
        return FannoFlow.FlowFunction(ChokedInletMach(resistance)) / Orifice.CriticalFlowFunction;
    }

    /// <summary>Pressure ratio at and below which the hole is choked, 0 to 0.5283.</summary>
    /// <param name="resistance">Resistance 4fL/D, 0 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double CriticalPressureRatio(double resistance) => Orifice.CriticalPressureRatio * ChokedFlowFactor(resistance);

    /// <summary>
    /// Mass flow with an ideal entry over A·p/√(R·T); without resistance it is <see cref="Orifice.FlowFunction"/>.
    /// </summary>
    /// <param name="pressureRatio">Absolute pressure behind the hole over that before it, 0 to 1.</param>
    /// <param name="resistance">Resistance 4fL/D, 0 to 1 000 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double FlowFunction(double pressureRatio, double resistance)
    {
        Bound.Check(pressureRatio, 0, 1, "pressure ratio");
        Bound.Check(resistance, 0, 1e6, "resistance 4fL/D");
        return FlowFunction(pressureRatio, resistance, ChokedInletMach(resistance));
    }

    internal static double ChokedInletMach(double resistance) => resistance == 0 ? 1 : FannoFlow.ChokedInletMach(resistance);

    /// <summary>The same for a known Mach number at the inlet of the choked hole.</summary>
    internal static double FlowFunction(double pressureRatio, double resistance, double chokedInletMach)
    {
        if (resistance == 0) return Orifice.FlowFunction(pressureRatio);
        if (pressureRatio == 1) return 0;
        var chokedFlow = FannoFlow.FlowFunction(chokedInletMach);
        if (pressureRatio <= FannoFlow.ChokedPressureRatio(chokedFlow)) return chokedFlow;
        return FannoFlow.FlowFunction(FannoFlow.InletMach(resistance, pressureRatio, chokedInletMach));
    }

    /// <summary>Mass flow of one hole, g/s.</summary>
    /// <param name="diameter">Diameter of the bore, mm, 0.01 to 100.</param>
    /// <param name="length">Length, mm, 0 to 1000.</param>
    /// <param name="upstream">Absolute pressure before the hole, Pa, 1 to 1 000 000.</param>
    /// <param name="downstream">Absolute pressure behind it, Pa, 0 to <paramref name="upstream"/>.</param>
    /// <param name="temperature">Temperature of the air before it, degrees C, -50 to 300.</param>
    /// <param name="dischargeCoefficient">Discharge coefficient of the entry, 0.1 to 1.</param>
    /// <param name="friction">Fanning friction factor, 0 to 0.1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range; the message names it and its limits.</exception>
    public static double MassFlow(
        double diameter, double length, double upstream, double downstream, double temperature,
        double dischargeCoefficient = Orifice.SharpEdgeCoefficient, double friction = WoodFriction)
    {
        var resistance = Resistance(diameter, length, friction);
        Bound.Check(upstream, 1, 1e6, "pressure before the hole", " Pa");
        Bound.Check(downstream, 0, upstream, "pressure behind the hole", " Pa");
        Bound.Check(temperature, -50, 300, "temperature of the air", " degrees C");
        Bound.Check(dischargeCoefficient, 0.1, 1, "discharge coefficient");
        var area = Math.PI / 4 * diameter * diameter * 1e-6;
        var kilograms = dischargeCoefficient * area * upstream * FlowFunction(downstream / upstream, resistance)
            / Math.Sqrt(DryAir.PressureOverDensity(temperature));
        return kilograms * 1000;
    }
}
