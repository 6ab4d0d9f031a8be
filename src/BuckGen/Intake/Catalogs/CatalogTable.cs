using BuckGen.Quantities;
using Tomlyn.Syntax;

namespace BuckGen.Intake.Catalogs;

/// <summary>One table of a catalog file. Values are read by key; keys that are left over at the end are unknown.</summary>
internal sealed class CatalogTable
{
    private readonly Dictionary<string, (object? Value, int Line)> values = new(StringComparer.Ordinal);
    private readonly HashSet<string> usedKeys = new(StringComparer.Ordinal);
    private readonly string file;
    private readonly string title;
    private readonly int line;

    public CatalogTable(string file, string title, int line, IEnumerable<KeyValueSyntax> items)
    {
        (this.file, this.title, this.line) = (file, title, line);
        foreach (var item in items)
        {
            var key = TomlValue.KeyOf(item);
            var at = item.Span.Start.Line + 1;
            if (!values.TryAdd(key, (TomlValue.ToObject(item.Value), at)))
                throw new CatalogException($"{file}, line {at}: \"{key}\" is given twice; remove one.");
        }
    }

    /// <summary>What to call the entry in messages, once its id is known.</summary>
    public string Entry { get; private set; } = "";

    public object? Take(string key)
    {
        usedKeys.Add(key);
        return values.TryGetValue(key, out var found) ? found.Value : null;
    }

    public string? Text(string key) => Take(key) switch
    {
        null => null,
        string { Length: > 0 } text => text,
        _ => throw Fault(key, $"\"{key}\" must be text in quotes"),
    };

    public string RequiredText(string key) => Text(key) ?? throw Fault(key, $"\"{key}\" is missing; add {key} = \"...\"");

    /// <summary>The id, which messages name from now on.</summary>
    public string Id() => Entry = RequiredText("id");

    /// <summary>All keys with their texts.</summary>
    public IEnumerable<KeyValuePair<string, string>> AllTexts() =>
        values.Keys.Select(key => KeyValuePair.Create(key, RequiredText(key)));

    /// <summary>Refuses unknown keys and lists the known ones.</summary>
    public void RejectUnknownKeys(string? known = null)
    {
        foreach (var key in values.Keys.Where(k => !usedKeys.Contains(k)))
            throw Fault(key,
                $"\"{key}\" is not known; known here: {known ?? string.Join(", ", usedKeys.Order(StringComparer.Ordinal))}");
    }

    /// <summary>A fault of a key: at its line, or at the table's when it is not given.</summary>
    public CatalogException Fault(string key, string what)
    {
        var at = values.TryGetValue(key, out var found) ? found.Line : line;
        var place = title.Length == 0 ? "" : Entry.Length == 0 ? $"in {title} " : $"in {title} \"{Entry}\" ";
        return new($"{file}, line {at}: {place}{what}.");
    }
}
