namespace BuckGen.Physics.Air;

/// <summary>Adiabatic flow of air with friction through a pipe of constant diameter (Fanno flow), by its Mach number.</summary>
/// <remarks>
/// Source: A. H. Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, vol. 1, chapter 6, from memory.
/// </remarks>
internal static class FannoFlow
{
    private const double G = DryAir.HeatRatio, Half = (G - 1) / 2;

    /// <summary>4fL/D of the pipe in which air that enters at a subsonic Mach number just reaches the speed of sound.</summary>
    public static double ResistanceToChoke(double mach)
    {
        var square = mach * mach;
        return (1 - square) / (G * square) + (G + 1) / (2 * G) * Math.Log((G + 1) * square / (2 + 2 * Half * square));
    }

    /// <summary>Mass flow over A·p0/√(R·T0), with the stagnation pressure and temperature before the pipe.</summary>
    public static double FlowFunction(double inletMach) =>
        Math.Sqrt(G) * inletMach * Math.Pow(1 + Half * inletMach * inletMach, -(G + 1) / (2 * (G - 1)));

    /// <summary>Mach number at the exit, from continuity and the constant stagnation temperature.</summary>
    /// <param name="flowFunction">Flow at the inlet, as given by <see cref="FlowFunction"/>.</param>
    /// <param name="pressureRatio">Pressure at the exit over the stagnation pressure before the pipe.</param>
    public static double ExitMach(double flowFunction, double pressureRatio)
    {
        var flux = flowFunction / (pressureRatio * Math.Sqrt(G));
        return Math.Sqrt((Math.Sqrt(1 + 4 * Half * flux * flux) - 1) / (2 * Half));
    }

    /// <summary>Exit pressure over the stagnation pressure before the pipe when the air leaves at the speed of sound.</summary>
    public static double ChokedPressureRatio(double flowFunction) => flowFunction / Math.Sqrt(G * (1 + Half));

    /// <summary>Mach number at the inlet of a pipe that is choked at its exit.</summary>
    public static double ChokedInletMach(double resistance) => InletMach(mach => ResistanceToChoke(mach) - resistance, 1);

    /// <summary>Mach number at the inlet of a pipe whose exit pressure is above the choking pressure.</summary>
    public static double InletMach(double resistance, double pressureRatio, double chokedInletMach) => InletMach(
        mach => ResistanceToChoke(mach) - ResistanceToChoke(ExitMach(FlowFunction(mach), pressureRatio)) - resistance,
        chokedInletMach);

    /// <summary>Halves the interval until it is narrower than 1e-13; the excess falls with the Mach number.</summary>
    private static double InletMach(Func<double, double> excess, double high) =>
        IntervalHalving.Narrow(0, high, mach => excess(mach) > 0, count: 45).High;
}
