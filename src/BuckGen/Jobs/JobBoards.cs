using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Jobs;

/// <summary>The boards that a job may name: its own, by their names, and those of the catalog, by their ids.</summary>
/// <param name="Own">The boards of the job.</param>
/// <param name="Catalog">The catalog.</param>
internal sealed record JobBoards(ImmutableArray<Stock> Own, Catalog Catalog)
{
    /// <summary>The board that goes by a name or an id; null when there is none.</summary>
    public Stock? Find(string wanted) =>
        Own.FirstOrDefault(s => s.Name == wanted) ?? Own.FirstOrDefault(s => s.Material?.Id == wanted)
            ?? (Catalog.FindStock(wanted) is { } known ? Stock.FromCatalog(known) : null);
}
