using System.Collections.Immutable;

namespace BuckGen.Intake.Catalogs;

/// <summary>Stocks and plastics with published figures.</summary>
public sealed record Catalog
{
    /// <summary>The stocks.</summary>
    public required ImmutableArray<CatalogStock> Stock { get; init; }

    /// <summary>The plastics.</summary>
    public required ImmutableArray<CatalogPlastic> Plastic { get; init; }

    /// <summary>The catalog that comes with the library.</summary>
    public static Catalog BuiltIn { get; } = new BuiltInCatalog().AddTo(new() { Stock = [], Plastic = [] });

    /// <summary>A stock, or null when the catalog does not hold it.</summary>
    /// <param name="id">Its id, upper and lower case alike.</param>
    public CatalogStock? FindStock(string id) => Find(Stock, id);

    /// <summary>A plastic, or null when the catalog does not hold it.</summary>
    /// <param name="id">Its id, upper and lower case alike.</param>
    public CatalogPlastic? FindPlastic(string id) => Find(Plastic, id);

    /// <summary>A stock or a plastic, or null when the catalog does not hold it.</summary>
    /// <param name="id">Its id, upper and lower case alike.</param>
    public CatalogEntry? FindEntry(string id) => Find(Stock, id) ?? Find(Plastic, id) as CatalogEntry;

    /// <summary>The same with further entries: an entry with a known id replaces the earlier one, others come last.</summary>
    internal Catalog With(Catalog further) =>
        new() { Stock = Merged(Stock, further.Stock), Plastic = Merged(Plastic, further.Plastic) };

    private static ImmutableArray<T> Merged<T>(ImmutableArray<T> known, ImmutableArray<T> further) where T : CatalogEntry =>
        further.Aggregate(known, (all, entry) => Find(all, entry.Id) is { } old ? all.Replace(old, entry) : all.Add(entry));

    internal static T? Find<T>(IEnumerable<T> entries, string id) where T : CatalogEntry =>
        entries.FirstOrDefault(e => string.Equals(e.Id, id, StringComparison.OrdinalIgnoreCase));

    /// <summary>The file that is part of the library.</summary>
    private sealed class BuiltInCatalog : ICatalogSource
    {
        public string Name => "catalog.toml";

        public Catalog AddTo(Catalog onto)
        {
            using var stream = typeof(Catalog).Assembly.GetManifestResourceStream("BuckGen.Intake.Catalogs.catalog.toml")!;
            using var reader = new StreamReader(stream);
            return CatalogFile.Read(reader.ReadToEnd(), Name, onto);
        }
    }
}
