namespace BuckGen.Intake.Catalogs;

/// <summary>A stock known by name.</summary>
public sealed record CatalogStock : CatalogEntry
{
    /// <summary>Average real thickness, mm, 0.2 to 100.</summary>
    public double Thickness => NumberOf("thickness") ?? throw new InvalidOperationException($"The stock {Id} has no thickness.");

    /// <summary>Minimum thickness within the maker's tolerance, mm; null when not known.</summary>
    public double? Lower => NumberOf("lower");

    /// <summary>Maximum thickness within the maker's tolerance, mm; null when not known.</summary>
    public double? Upper => NumberOf("upper");

    /// <summary>Density, kg/m³; null when not known.</summary>
    public FigureRange? Density => RangeOf("density");

    /// <summary>Thermal conductivity through the thickness of the board, W/(m·K); null when not known.</summary>
    public FigureRange? Conductivity => RangeOf("conductivity");

    /// <summary>Heat capacity, J/(kg·K); null when not known.</summary>
    public FigureRange? HeatCapacity => RangeOf("heat-capacity");

    /// <summary>
    /// Full width of a CO2 laser's cut to start from, mm, before a test piece is measured; null when not known.
    /// </summary>
    public double? Kerf => NumberOf("kerf");

    /// <summary>Whether a laser may cut it; null when not known.</summary>
    public Suitability? Laser => SuitabilityOf("laser");

    /// <summary>Whether a router may cut it; null when not known.</summary>
    public Suitability? Router => SuitabilityOf("router");

    /// <summary>Whether its grain shows through a thin sheet; null when not known.</summary>
    public bool? GrainShows => TextOf("grain") is { } word ? word == "yes" : null;

    /// <summary>Price of a whole board in the shop's money, from the shop's own file; null when not known.</summary>
    public double? Price => NumberOf("price");

    /// <summary>How fast the shop's machine cuts it, mm a minute, from the shop's own file; null when not known.</summary>
    public double? CutFeed => NumberOf("cut-feed");

    /// <summary>Expansion in the plane of the board, millionths of length per degree C; null when not known.</summary>
    public FigureRange? Expansion => RangeOf("expansion");

    /// <summary>A caution; null when there is no caution.</summary>
    public string? Caution => TextOf("caution");
}
