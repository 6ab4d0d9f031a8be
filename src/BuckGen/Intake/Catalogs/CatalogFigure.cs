using System.Collections.Immutable;

namespace BuckGen.Intake.Catalogs;

/// <summary>A figure or a remark of the catalog, with where it comes from.</summary>
public sealed record CatalogFigure
{
    /// <summary>Its key in catalog files: "forming-lower".</summary>
    public required string Key { get; init; }

    /// <summary>What it is, in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>Its unit; empty for words.</summary>
    public required string Unit { get; init; }

    /// <summary>The number or range; null for words.</summary>
    public FigureRange? Range { get; init; }

    /// <summary>The words; null for numbers.</summary>
    public string? Text { get; init; }

    /// <summary>Where it comes from; never empty.</summary>
    public required ImmutableArray<string> Sources { get; init; }
}
