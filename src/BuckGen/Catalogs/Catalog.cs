using System.Collections.Immutable;
using System.Text.Json.Serialization;
using BuckGen.Bucks;
using Tomlyn;

namespace BuckGen.Catalogs;

/// <summary>A sheet material known by name.</summary>
public sealed record CatalogStock
{
    /// <summary>The word that stands for it in job files and on the command line: "mdf-12".</summary>
    public required string Id { get; init; }

    /// <summary>Its name in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>Average real thickness, mm.</summary>
    public required double Thickness { get; init; }

    /// <summary>Least thickness within the maker's tolerance, mm.</summary>
    public required double Lower { get; init; }

    /// <summary>Greatest thickness within the maker's tolerance, mm.</summary>
    public required double Upper { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }
}

/// <summary>A plastic known by name.</summary>
public sealed record CatalogPlastic
{
    /// <summary>The word that stands for it.</summary>
    public required string Id { get; init; }

    /// <summary>Its name in plain words.</summary>
    public required string Name { get; init; }

    /// <summary>Least and greatest shrinkage on cooling, per cent of length.</summary>
    public required ImmutableArray<double> Shrinkage { get; init; }

    /// <summary>Usual draft on a male buck, degrees.</summary>
    [JsonPropertyName("draft-male")]
    public required double DraftMale { get; init; }

    /// <summary>What to beware of.</summary>
    public required string Caution { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }
}

/// <summary>Sheets and plastics with published figures, from the data file catalog.toml.</summary>
public sealed record Catalog
{
    /// <summary>The sheets.</summary>
    public required ImmutableArray<CatalogStock> Stock { get; init; }

    /// <summary>The plastics.</summary>
    public required ImmutableArray<CatalogPlastic> Plastic { get; init; }

    /// <summary>The catalog that comes with the library.</summary>
    public static Catalog BuiltIn { get; } = Read();

    /// <summary>A sheet as stock of assumed size, or null when the catalog does not hold it.</summary>
    /// <param name="id">Its word, upper and lower case alike.</param>
    public static Stock? FindStock(string id) =>
        BuiltIn.Stock.FirstOrDefault(s => string.Equals(s.Id, id, StringComparison.OrdinalIgnoreCase)) is { } found
            ? new(found.Name, found.Thickness) { SizeIsAssumed = true }
            : null;

    private static Catalog Read()
    {
        using var stream = typeof(Catalog).Assembly.GetManifestResourceStream("BuckGen.Catalogs.catalog.toml")!;
        using var reader = new StreamReader(stream);
        return TomlSerializer.Deserialize<Catalog>(reader.ReadToEnd(), new TomlSerializerOptions { PropertyNamingPolicy = System.Text.Json.JsonNamingPolicy.KebabCaseLower })
            ?? throw new InvalidOperationException("The built-in catalog is empty.");
    }
}
