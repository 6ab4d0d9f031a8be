using System.Collections.Immutable;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BuckGen.Intake.Catalogs;

/// <summary>
/// Reads a catalog file (TOML): tables [[stock]] and [[plastic]], and [sources] for sources that several figures share.
/// </summary>
/// <remarks>
/// A figure is written <c>key = value</c> or <c>key = { value = ..., source = "..." }</c>; the value is a number, two numbers in
/// brackets for minimum and maximum, or words. A source is plain text or a word of [sources], or a list of those. Figures without
/// one have that of their entry. <c>like = "id"</c> takes from another entry what is not given.
/// </remarks>
public static class CatalogFile
{
    /// <summary>Reads a catalog on top of another: entries with a known id replace those, others are added at the end.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="name">The file's name, for messages.</param>
    /// <param name="onto">The other catalog; the one that comes with the library when left out.</param>
    /// <exception cref="CatalogException">The file is not understood; the message names line and key.</exception>
    public static Catalog Read(string text, string name, Catalog? onto = null)
    {
        onto ??= Catalog.BuiltIn;
        var document = SyntaxParser.Parse(text, name, validate: true);
        if (document.HasErrors)
        {
            var first = document.Diagnostics.First(d => d.Kind == DiagnosticMessageKind.Error);
            throw new CatalogException($"{name}, line {first.Span.Start.Line + 1}: {first.Message.TrimEnd('.')}.");
        }

        var outside = new CatalogTable(name, "", 1, document.KeyValues);
        outside.RejectUnknownKeys("tables [[stock]], [[plastic]] and [sources]");
        var tables = document.Tables.Select(t => (Kind: KindOf(t, name), Table: TableOf(t, name))).ToList();
        var sources = tables.Where(t => t.Kind == "sources").SelectMany(t => t.Table.AllTexts()).ToImmutableDictionary();
        // In the order of the file, so that an entry can be like one above it.
        return new()
        {
            Stock = Merge(onto.Stock, FigureKinds.Stock,
                (id, title, figures) => new CatalogStock { Id = id, Name = title, Figures = figures }),
            Plastic = Merge(onto.Plastic, FigureKinds.Plastic,
                (id, title, figures) => new CatalogPlastic { Id = id, Name = title, Figures = figures }),
        };

        ImmutableArray<T> Merge<T>(ImmutableArray<T> known, FigureKinds kinds,
            Func<string, string, ImmutableArray<CatalogFigure>, T> make)
            where T : CatalogEntry
        {
            var given = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
            foreach (var (_, table) in tables.Where(t => t.Kind == kinds.Title))
            {
                var entry = EntryReading.Read(table, kinds, sources, known, make);
                if (!given.Add(entry.Id)) throw table.Fault("id", $"\"{entry.Id}\" is given twice; remove one");
                known = Catalog.Find(known, entry.Id) is { } old ? known.Replace(old, entry) : known.Add(entry);
            }
            return known;
        }
    }

    private static string KindOf(TableSyntaxBase syntax, string file)
    {
        var key = syntax.Name?.ToString().Trim() ?? "";
        return (key, syntax) is ("stock" or "plastic", TableArraySyntax) or ("sources", TableSyntax)
            ? key
            : throw new CatalogException(
                $"{file}, line {syntax.Span.Start.Line + 1}: the table {(syntax is TableArraySyntax ? $"[[{key}]]"
                    : $"[{key}]")} is not known; known are [[stock]], [[plastic]] and [sources].");
    }

    private static CatalogTable TableOf(TableSyntaxBase syntax, string file) =>
        new(file, syntax is TableArraySyntax ? $"[[{syntax.Name?.ToString().Trim()}]]" : "[sources]", syntax.Span.Start.Line + 1,
            syntax.Items);
}
