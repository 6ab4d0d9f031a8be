namespace BuckGen.Physics.Air;

/// <summary>Air through a hole that is long against its bore, such as a pilot hole through a face layer.</summary>
/// <remarks>
/// The bore is a pipe with wall friction and no heat (Fanno flow) behind a nozzle, and the whole is multiplied by the discharge
/// coefficient of the entry. Behind a sharp entry the jet fills a long bore again (Weisbach's 0.81 to 0.84 instead of about
/// 0.65); that gain is left out, so that a longer hole never passes more and the result errs on the slow side.
/// </remarks>
internal static class LongHole
{
    /// <summary>
    /// Friction factor (Fanning's, a quarter of Darcy's) of a bore through MDF or plywood assumed unless another is given.
    /// </summary>
    /// <remarks>
    /// Colebrook's formula for fuzz 0.02 mm high in a 1 mm bore at a Reynolds number of 10 000 gives 0.013, a smooth bore 0.008;
    /// the height of the fuzz is an estimate, no source.
    /// </remarks>
    public const double WoodFriction = 0.0125;

    /// <summary>4fL/D: how strongly the wall of a bore holds the air back; 0 for a sharp hole in thin material.</summary>
    /// <param name="diameter">Bore, mm, 0.01 to 100.</param>
    /// <param name="length">Length, mm, 0 to 1000.</param>
    /// <param name="friction">Fanning's friction factor, 0 to 0.1.</param>
    public static double Resistance(double diameter, double length, double friction = WoodFriction)
    {
        Bound.Check(diameter, 0.01, 100, "diameter of the hole", " mm");
        Bound.Check(length, 0, 1000, "length of the hole", " mm");
        Bound.Check(friction, 0, 0.1, "friction factor");
        return 4 * friction * length / diameter;
    }

    /// <summary>
    /// Flow of a choked long hole over that of a choked short one, 0 to 1. Its choking pressure ratio is less by the same factor.
    /// </summary>
    /// <param name="resistance">4fL/D, 0 or more.</param>
    public static double ChokedFlowFactor(double resistance)
    {
        Bound.Check(resistance, 0, 1e6, "resistance 4fL/D");
        return FannoFlow.FlowFunction(ChokedInletMach(resistance)) / Orifice.CriticalFlowFunction;
    }

    /// <summary>Pressure ratio at and below which the hole is choked, 0 to 0.5283.</summary>
    /// <param name="resistance">4fL/D, 0 or more.</param>
    public static double CriticalPressureRatio(double resistance) => Orifice.CriticalPressureRatio * ChokedFlowFactor(resistance);

    /// <summary>
    /// The mass flow of an ideal entry over A·p/√(R·T); for no resistance it is <see cref="Orifice.FlowFunction"/>.
    /// </summary>
    /// <param name="pressureRatio">Absolute pressure behind the hole over that before it, 0 to 1.</param>
    /// <param name="resistance">4fL/D, 0 or more.</param>
    public static double FlowFunction(double pressureRatio, double resistance)
    {
        Bound.Check(pressureRatio, 0, 1, "pressure ratio");
        Bound.Check(resistance, 0, 1e6, "resistance 4fL/D");
        return FlowFunction(pressureRatio, resistance, ChokedInletMach(resistance));
    }

    internal static double ChokedInletMach(double resistance) => resistance == 0 ? 1 : FannoFlow.ChokedInletMach(resistance);

    /// <summary>The same, with the Mach number at the inlet of the choked hole known.</summary>
    internal static double FlowFunction(double pressureRatio, double resistance, double chokedInletMach)
    {
        if (resistance == 0) return Orifice.FlowFunction(pressureRatio);
        if (pressureRatio == 1) return 0;
        var chokedFlow = FannoFlow.FlowFunction(chokedInletMach);
        if (pressureRatio <= FannoFlow.ChokedPressureRatio(chokedFlow)) return chokedFlow;
        return FannoFlow.FlowFunction(FannoFlow.InletMach(resistance, pressureRatio, chokedInletMach));
    }

    /// <summary>Mass flow of one hole, g/s.</summary>
    /// <param name="diameter">Bore, mm, 0.01 to 100.</param>
    /// <param name="length">Length, mm, 0 to 1000.</param>
    /// <param name="upstream">Absolute pressure before the hole, Pa, 1 to 1 000 000.</param>
    /// <param name="downstream">Absolute pressure behind it, Pa, 0 to <paramref name="upstream"/>.</param>
    /// <param name="temperature">Temperature of the air before it, degrees C, -50 to 300.</param>
    /// <param name="dischargeCoefficient">Share of the ideal flow that passes the entry, 0.1 to 1.</param>
    /// <param name="friction">Fanning's friction factor, 0 to 0.1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
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
