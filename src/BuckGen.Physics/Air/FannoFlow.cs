namespace BuckGen.Physics.Air;

/// <summary>Air through a pipe of even bore with friction and without heat, by its Mach number.</summary>
/// <remarks>
/// Source: A. H. Shapiro, The Dynamics and Thermodynamics of Compressible Fluid Flow, vol. 1, chapter 6, from memory.
/// </remarks>
internal static class FannoFlow
{
    private const double G = DryAir.HeatRatio, Half = (G - 1) / 2;

    /// <summary>4fL/D of the pipe in which air that enters below the speed of sound just reaches it.</summary>
    public static double ResistanceToChoke(double mach)
    {
        var square = mach * mach;
        return (1 - square) / (G * square) + (G + 1) / (2 * G) * Math.Log((G + 1) * square / (2 + 2 * Half * square));
    }

    /// <summary>Mass flow over A·p/√(R·T), with the pressure and temperature of the air at rest before the pipe.</summary>
    public static double FlowFunction(double inletMach) =>
        Math.Sqrt(G) * inletMach * Math.Pow(1 + Half * inletMach * inletMach, -(G + 1) / (2 * (G - 1)));

    /// <summary>Mach number at the exit, from continuity and the unchanging total temperature.</summary>
    /// <param name="flowFunction">What enters, as <see cref="FlowFunction"/>.</param>
    /// <param name="pressureRatio">Pressure at the exit over that of the air at rest before the pipe.</param>
    public static double ExitMach(double flowFunction, double pressureRatio)
    {
        var flux = flowFunction / (pressureRatio * Math.Sqrt(G));
        return Math.Sqrt((Math.Sqrt(1 + 4 * Half * flux * flux) - 1) / (2 * Half));
    }

    /// <summary>Exit pressure over that of the air at rest before the pipe, when the air leaves at the speed of sound.</summary>
    public static double ChokedPressureRatio(double flowFunction) => flowFunction / Math.Sqrt(G * (1 + Half));

    /// <summary>Mach number at the inlet of a pipe that is choked at its exit.</summary>
    public static double ChokedInletMach(double resistance) => InletMach(mach => ResistanceToChoke(mach) - resistance, 1);

    /// <summary>Mach number at the inlet of a pipe whose exit stands at a pressure above the choking one.</summary>
    public static double InletMach(double resistance, double pressureRatio, double chokedInletMach) => InletMach(
        mach => ResistanceToChoke(mach) - ResistanceToChoke(ExitMach(FlowFunction(mach), pressureRatio)) - resistance, chokedInletMach);

    /// <summary>Halves the range until it is narrower than 1e-13; the excess falls as the Mach number rises.</summary>
    private static double InletMach(Func<double, double> excess, double high)
    {
        var low = 0.0;
        for (var i = 0; i < 45; i++)
        {
            var middle = (low + high) / 2;
            if (excess(middle) > 0) low = middle;
            else high = middle;
        }
        return high;
    }
}
