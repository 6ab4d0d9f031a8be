using System.Collections.Immutable;
using BuckGen.Quantities;

namespace BuckGen.Intake.Catalogs;

/// <summary>A material known by name, with all its figures.</summary>
public abstract record CatalogEntry
{
    /// <summary>Its id in job files and on the command line: "mdf-12".</summary>
    public required string Id { get; init; }

    /// <summary>Its name in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>All figures, each with its sources.</summary>
    public required ImmutableArray<CatalogFigure> Figures { get; init; }

    /// <summary>The sources of all figures, each once.</summary>
    public string Source => string.Join("; ", Figures.SelectMany(f => f.Sources).Distinct());

    /// <summary>A figure by its key, or null when it is not known.</summary>
    /// <param name="key">The key in catalog files.</param>
    public CatalogFigure? Find(string key) => Figures.FirstOrDefault(f => f.Key == key);

    private protected FigureRange? RangeOf(string key) => Find(key)?.Range;

    private protected double? NumberOf(string key) => Find(key)?.Range?.Low;

    private protected string? TextOf(string key) => Find(key)?.Text;

    private protected Suitability? SuitabilityOf(string key) =>
        Words.TryParse<Suitability>(TextOf(key), out var word) ? word : null;
}
