namespace BuckGen.Physics.Heat;

/// <summary>Thermal properties of a material.</summary>
/// <remarks>
/// They are the same at all temperatures. For a plastic that melts on the way, the heat capacity must include the heat of fusion,
/// spread over the range of temperatures.
/// </remarks>
/// <param name="Conductivity">Thermal conductivity, W/(m·K), 0.01 to 500.</param>
/// <param name="Density">Density, kg/m³, 1 to 25 000.</param>
/// <param name="HeatCapacity">Specific heat capacity, J/(kg·K), 100 to 10 000.</param>
public sealed record SheetMaterial(double Conductivity, double Density, double HeatCapacity)
{
    /// <summary>Thermal diffusivity, mm²/s: about 0.1 for plastics.</summary>
    public double Diffusivity => Conductivity / (Density * HeatCapacity) * 1e6;

    internal void Validate()
    {
        Bound.Check(Conductivity, 0.01, 500, "thermal conductivity", " W/(m K)");
        Bound.Check(Density, 1, 25_000, "density", " kg/m3");
        Bound.Check(HeatCapacity, 100, 10_000, "heat capacity", " J/(kg K)");
    }
}
