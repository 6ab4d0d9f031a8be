using System.Collections.Immutable;
using BuckGen.Findings;

namespace BuckGen.Intake.Catalogs;

/// <summary>The checked entries of a plug-in's catalog.</summary>
internal static class CatalogAnswer
{
    private const int Most = 10_000, LongestWord = 60, LongestText = 2000;

    /// <summary>A copy of only the entries that a source adds to a catalog.</summary>
    /// <exception cref="AnswerException">The source gave something that can't be used.</exception>
    public static Catalog Of(ICatalogSource source, Catalog onto)
    {
        var given = source.AddTo(onto) ?? throw new AnswerException("it gave nothing");
        return new()
        {
            Stock = [.. Answer.List(given.Stock, Most, "stock", e => Fault(e, FigureKinds.Stock)).Where(e => !onto.Stock.Contains(e)).Select(e => e with { Figures = Copied(e.Figures) })],
            Plastic = [.. Answer.List(given.Plastic, Most, "plastic", e => Fault(e, FigureKinds.Plastic)).Where(e => !onto.Plastic.Contains(e)).Select(e => e with { Figures = Copied(e.Figures) })],
        };
    }

    private static ImmutableArray<CatalogFigure> Copied(ImmutableArray<CatalogFigure> figures) => [.. figures.Select(f => f with { Sources = [.. f.Sources] })];

    private static string? Fault(CatalogEntry entry, FigureKinds kinds)
    {
        if (entry.Id is not { Length: > 0 and <= LongestWord } id || !EntryReading.IsId(id)) return "has an id that does not begin with a letter or holds more than letters, digits, \"-\", \".\" and \"_\"";
        if (Answer.WordsFault(entry.Name, LongestWord) is { } name) return $"({id}) has a name that {name}";
        var figures = Answer.List(entry.Figures, kinds.All.Length, "figure", f => Fault(f, kinds));
        return kinds.All.FirstOrDefault(k => k.Required && figures.All(f => f.Key != k.Key)) is { } missing ? $"({id}) has no {missing.Key}" : null;
    }

    private static string? Fault(CatalogFigure figure, FigureKinds kinds) =>
        kinds.All.FirstOrDefault(k => k.Key == figure.Key) is not { } kind ? "has a key that is not known"
        : figure.Sources.IsDefaultOrEmpty || figure.Sources.Any(s => Answer.WordsFault(s, LongestText) is not null) ? $"({kind.Key}) has no source"
        : (Answer.WordsFault(figure.Name, LongestText) ?? Answer.WordsFault(figure.Unit, LongestWord)) is { } words ? $"({kind.Key}) has a name or unit that {words}"
        : kind.Limits is { } limits && !(figure.Range is { } range && limits.Low <= range.Low && range.Low <= range.High && range.High <= limits.High) ? FormattableString.Invariant($"({kind.Key}) is not from {limits.Low} to {limits.High}")
        : kind.Limits is null && (Answer.WordsFault(figure.Text, LongestText) is not null || (kind.Words.Length > 0 && !kind.Words.Contains(figure.Text))) ? $"({kind.Key}) has no words, or none that are known"
        : null;
}
