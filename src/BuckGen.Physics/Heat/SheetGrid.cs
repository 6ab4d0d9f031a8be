namespace BuckGen.Physics.Heat;

/// <summary>The grid through the thickness of the sheet, fine at the faces, where the temperature gradient is steepest.</summary>
/// <remarks>
/// Finite volumes: the cell of each point reaches half-way to its neighbours. So no heat is lost between cells, and the mean is
/// exact for the heat that they hold. The points are Chebyshev-Lobatto points.
/// </remarks>
internal sealed class SheetGrid
{
    private readonly double[] capacity;
    private readonly double[] conductance;
    private readonly double[] widthShare;

    /// <param name="sheet">The sheet.</param>
    /// <param name="intervals">Number of intervals between points, even, so that a point lies at the core.</param>
    public SheetGrid(FlatSheet sheet, int intervals)
    {
        var thickness = sheet.Thickness / 1000;
        var points = new double[intervals + 1];
        for (var i = 0; i <= intervals; i++) points[i] = (1 - Math.Cos(Math.PI * i / intervals)) / 2;
        widthShare = new double[intervals + 1];
        conductance = new double[intervals];
        for (var i = 0; i < intervals; i++)
        {
            var gap = points[i + 1] - points[i];
            widthShare[i] += gap / 2;
            widthShare[i + 1] += gap / 2;
            conductance[i] = sheet.Material.Conductivity / (gap * thickness);
        }
        capacity = [.. widthShare.Select(s => s * thickness * sheet.Material.Density * sheet.Material.HeatCapacity)];
    }

    /// <summary>Heat capacity of each cell per area, J/(m²·K).</summary>
    public ReadOnlySpan<double> Capacity => capacity;

    /// <summary>Thermal conductance between neighbouring points per area, W/(m²·K).</summary>
    public ReadOnlySpan<double> Conductance => conductance;

    public double[] Uniform(double temperature) => [.. widthShare.Select(_ => temperature)];

    public SheetTemperatures Summarize(double[] temperatures)
    {
        var mean = 0.0;
        for (var i = 0; i < temperatures.Length; i++) mean += widthShare[i] * temperatures[i];
        return new(
            temperatures[0], temperatures[temperatures.Length / 2], temperatures[^1], mean, temperatures.Min(),
            temperatures.Max());
    }
}
