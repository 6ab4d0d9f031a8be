namespace BuckGen.Physics.Heat;

/// <summary>The grid through the thickness of the sheet, fine at the faces, where the temperature gradient is steepest.</summary>
/// <remarks>
/// Finite volumes: the cell of each point reaches half-way to its neighbours. So no heat is lost between cells, and the mean is
/// exact for the heat that they hold. The points are Chebyshev-Lobatto points. A body under the sheet has points of its own,
/// before those of the sheet. The last point of the body and the first of the sheet both lie in the contact.
/// </remarks>
internal sealed class SheetGrid
{
    private readonly double[] capacity;
    private readonly double[] conductance;
    private readonly double[] widthShare;

    /// <param name="sheet">The sheet.</param>
    /// <param name="intervals">
    /// Number of intervals between points, even, so that a point lies at the core; the same in a body under the sheet.
    /// </param>
    /// <param name="backing">The body under the sheet; null for none.</param>
    public SheetGrid(FlatSheet sheet, int intervals, SheetBacking? backing = null)
    {
        var (gap, share) = Points(intervals);
        widthShare = share;
        FirstOfSheet = backing is null ? 0 : share.Length;
        capacity =
        [
            .. backing is null ? [] : Capacities(backing.Body, share),
            .. Capacities(sheet, share),
        ];
        conductance =
        [
            .. backing is null ? [] : Conductances(backing.Body, gap).Append(backing.Contact),
            .. Conductances(sheet, gap),
        ];
    }

    /// <summary>Heat capacity of each cell per area, J/(m²·K).</summary>
    public ReadOnlySpan<double> Capacity => capacity;

    /// <summary>Thermal conductance between neighbouring points per area, W/(m²·K).</summary>
    public ReadOnlySpan<double> Conductance => conductance;

    /// <summary>Index of the first point of the sheet: the number of points of the body under it.</summary>
    public int FirstOfSheet { get; }

    /// <summary>The same temperature all through sheet and body, degrees C.</summary>
    public double[] Uniform(double temperature) => [.. capacity.Select(_ => temperature)];

    /// <summary>The sheet at one temperature on a body that already has its own, degrees C.</summary>
    public double[] Place(double sheet, IEnumerable<double> body) => [.. body, .. widthShare.Select(_ => sheet)];

    /// <summary>Temperature that sheet and body would have if they shared their heat evenly, degrees C.</summary>
    public double Mixed(double[] temperatures) => temperatures.Zip(capacity, (t, c) => t * c).Sum() / capacity.Sum();

    /// <summary>The temperatures of the sheet alone.</summary>
    public SheetTemperatures Summarize(double[] temperatures)
    {
        var sheet = temperatures.AsSpan(FirstOfSheet);
        var (mean, coldest, hottest) = (0.0, sheet[0], sheet[0]);
        for (var i = 0; i < sheet.Length; i++)
        {
            mean += widthShare[i] * sheet[i];
            (coldest, hottest) = (Math.Min(coldest, sheet[i]), Math.Max(hottest, sheet[i]));
        }
        return new(sheet[0], sheet[sheet.Length / 2], sheet[^1], mean, coldest, hottest);
    }

    /// <summary>Distances between neighbouring points, and widths of their cells, as shares of the thickness.</summary>
    private static (double[] Gap, double[] Share) Points(int intervals)
    {
        var points = new double[intervals + 1];
        for (var i = 0; i <= intervals; i++) points[i] = (1 - Math.Cos(Math.PI * i / intervals)) / 2;
        var (gaps, shares) = (new double[intervals], new double[intervals + 1]);
        for (var i = 0; i < intervals; i++)
        {
            gaps[i] = points[i + 1] - points[i];
            shares[i] += gaps[i] / 2;
            shares[i + 1] += gaps[i] / 2;
        }
        return (gaps, shares);
    }

    private static IEnumerable<double> Capacities(FlatSheet body, double[] share) =>
        share.Select(s => s * (body.Thickness / 1000) * body.Material.Density * body.Material.HeatCapacity);

    private static IEnumerable<double> Conductances(FlatSheet body, double[] gap) =>
        gap.Select(g => body.Material.Conductivity / (g * (body.Thickness / 1000)));
}
