using System.Collections.Immutable;
using BuckGen.Findings;

namespace BuckGen.Intake.Catalogs;

/// <summary>The checked entries of a plug-in's catalog.</summary>
internal static class CatalogResult
{
    private const int MaxEntries = 10_000, MaxWordLength = 60, MaxTextLength = 2000;

    /// <summary>A copy of only the entries that a source adds to a catalog.</summary>
    /// <exception cref="ForeignResultException">The source gave something that can't be used.</exception>
    public static Catalog Read(ICatalogSource source, Catalog onto)
    {
        var given = source.AddTo(onto) ?? throw new ForeignResultException("it gave nothing");
        return new()
        {
            Stock = [.. ForeignResult.List(given.Stock, MaxEntries, "stock", e => Fault(e, FigureKinds.Stock))
                .Where(e => !onto.Stock.Contains(e)).Select(e => e with { Figures = Copied(e.Figures) })],
            Plastic = [.. ForeignResult.List(given.Plastic, MaxEntries, "plastic", e => Fault(e, FigureKinds.Plastic))
                .Where(e => !onto.Plastic.Contains(e)).Select(e => e with { Figures = Copied(e.Figures) })],
        };
    }

    private static ImmutableArray<CatalogFigure> Copied(ImmutableArray<CatalogFigure> figures) =>
        [.. figures.Select(f => f with { Sources = [.. f.Sources] })];

    private static string? Fault(CatalogEntry entry, FigureKinds kinds)
    {
        if (entry.Id is not { Length: > 0 and <= MaxWordLength } id || !EntryReading.IsId(id))
            return "has an id that does not begin with a letter or holds more than letters, digits, \"-\", \".\" and \"_\"";
        if (ForeignResult.WordsFault(entry.Name, MaxWordLength) is { } name) return $"({id}) has a name that {name}";
        var figures = ForeignResult.List(entry.Figures, kinds.All.Length, "figure", f => Fault(f, kinds));
        return kinds.All.FirstOrDefault(k => k.Required && figures.All(f => f.Key != k.Key)) is { } missing
            ? $"({id}) has no {missing.Key}" : null;
    }

    private static string? Fault(CatalogFigure figure, FigureKinds kinds) =>
        kinds.All.FirstOrDefault(k => k.Key == figure.Key) is not { } kind ? "has a key that is not known"
        : figure.Sources.IsDefaultOrEmpty || figure.Sources.Any(s => ForeignResult.WordsFault(s, MaxTextLength) is not null)
        ? $"({kind.Key}) has no source"
        : (ForeignResult.WordsFault(figure.Name, MaxTextLength)
            ?? ForeignResult.WordsFault(figure.Unit, MaxWordLength)) is { } words
            ? $"({kind.Key}) has a name or unit that {words}"
        : kind.Limits is { } limits
        && !(figure.Range is { } range && limits.Low <= range.Low && range.Low <= range.High && range.High <= limits.High)
        ? FormattableString.Invariant($"({kind.Key}) is not from {limits.Low} to {limits.High}")
        : kind.Limits is null
        && (ForeignResult.WordsFault(figure.Text, MaxTextLength) is not null
            || (kind.Words.Length > 0 && !kind.Words.Contains(figure.Text)))
            ? $"({kind.Key}) has no words, or none that are known"
        : null;
}
