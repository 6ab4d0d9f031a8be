namespace BuckGen.Physics.Heat;

/// <summary>How much a length grows when it warms.</summary>
internal static class ThermalGrowth
{
    /// <summary>The growth, in the unit of the length; negative when it cools.</summary>
    /// <param name="length">The length.</param>
    /// <param name="perDegree">Expansion per degree.</param>
    /// <param name="degrees">By how many degrees it warms.</param>
    public static double LengthChange(double length, double perDegree, double degrees) => length * perDegree * degrees;
}
