namespace BuckGen.Physics.Air;

/// <summary>Air as a perfect gas. Its humidity changes flow by less than 1 % at room temperature.</summary>
internal static class DryAir
{
    /// <summary>
    /// Ratio of the specific heats. Source: NACA Report 1135 (1953), which computes all its tables for air with it.
    /// </summary>
    public const double HeatRatio = 1.4;

    /// <summary>Gas constant, J/(kg·K). Source: ICAO standard atmosphere, 287.05, from memory.</summary>
    public const double GasConstant = 287.05;

    /// <summary>
    /// Pressure over density, (m/s)²: the square of the velocity to which all flow through holes is proportional.
    /// </summary>
    /// <param name="temperature">Temperature, degrees C.</param>
    public static double PressureOverDensity(double temperature) => GasConstant * (temperature + 273.15);
}
