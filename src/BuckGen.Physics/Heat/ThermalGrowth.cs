namespace BuckGen.Physics.Heat;

/// <summary>Thermal expansion of a length.</summary>
internal static class ThermalGrowth
{
    /// <summary>The change of length, in the unit of the length; negative for cooling.</summary>
    /// <param name="length">The length.</param>
    /// <param name="perDegree">Coefficient of linear thermal expansion, 1/K.</param>
    /// <param name="degrees">Change of temperature, K.</param>
    public static double LengthChange(double length, double perDegree, double degrees) => length * perDegree * degrees;
}
