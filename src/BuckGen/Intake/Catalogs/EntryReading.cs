using System.Collections.Immutable;

namespace BuckGen.Intake.Catalogs;

/// <summary>Reads one entry of a catalog file and checks its figures against each other.</summary>
internal static class EntryReading
{
    public static T Read<T>(
        CatalogTable table, FigureKinds kinds, ImmutableDictionary<string, string> sources, ImmutableArray<T> known,
        Func<string, string, ImmutableArray<CatalogFigure>, T> make) where T : CatalogEntry
    {
        var id = table.Id();
        if (!IsId(id))
            throw table.Fault("id", "\"id\" must begin with a letter and hold only letters, digits, \"-\", \".\" and \"_\"");
        var like = table.Text("like") is { } other
            ? Catalog.Find(known, other)
            ?? throw table.Fault("like",
                $"\"like\" is \"{other}\", but no [[{kinds.Title}]] above and no built-in one has that id")
            : null;
        var name = table.Text("name") ?? like?.Name ?? table.RequiredText("name");
        var reading = new FigureReading(table, sources);
        var figures = kinds.All.Select(kind => reading.Read(kind) ?? like?.Find(kind.Key)).OfType<CatalogFigure>()
            .ToImmutableArray();
        table.RejectUnknownKeys();
        foreach (var kind in kinds.All)
            if (kind.Required && figures.All(f => f.Key != kind.Key))
                throw table.Fault(kind.Key, $"\"{kind.Key}\" is missing: the {kind.Name}; add {kind.Key} = ...");
        foreach (var row in kinds.Rising) CheckRising(table, row, figures);
        return make(id, name, figures);
    }

    /// <summary>True for a word that can be an id.</summary>
    public static bool IsId(string id) =>
        char.IsAsciiLetter(id[0]) && id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.' or '_');

    private static void CheckRising(CatalogTable table, ImmutableArray<string> row, ImmutableArray<CatalogFigure> figures)
    {
        var present = row.Select(key => figures.FirstOrDefault(f => f.Key == key)).OfType<CatalogFigure>().ToArray();
        foreach (var (less, more) in present.Zip(present.Skip(1)))
            if (less.Range is { } low && more.Range is { } high && low.High > high.Low)
                throw table.Fault(more.Key, FormattableString.Invariant(
                    $"\"{more.Key}\" is {high.Low}, below \"{less.Key}\", which is {low.High}; they must rise"));
    }
}
