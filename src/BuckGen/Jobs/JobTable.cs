using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Quantities;
using BuckGen.Settings;
using Tomlyn.Syntax;

namespace BuckGen.Jobs;

/// <summary>
/// One table of a job file. Values are read by their settings; a value that is refused is noted and the default taken instead.
/// Keys that are left over at the end are unknown.
/// </summary>
/// <param name="faults">Where mistakes are noted.</param>
/// <param name="name">The table's name; empty for the keys above the first table.</param>
/// <param name="line">Its line.</param>
internal sealed class JobTable(JobFaults faults, string name, int line)
{
    private readonly Dictionary<string, JobValue> values = new(StringComparer.Ordinal);
    private readonly HashSet<string> usedKeys = new(StringComparer.Ordinal);

    /// <summary>The line of the table's name.</summary>
    public int Line => line;

    /// <summary>Remembers a key and its value. The parser refuses a key given twice.</summary>
    public void Add(KeyValueSyntax item) =>
        values[TomlValue.KeyOf(item)] = new(TomlValue.ToObject(item.Value), item.Span.Start.Line + 1);

    /// <summary>True when the key is given.</summary>
    public bool Has(Setting setting) => Take(setting) is not null;

    /// <summary>True when the key is given as a list.</summary>
    public bool IsList(Setting setting) => Take(setting)?.Content is object?[];

    /// <summary>The line of a key, or that of the table when it is not given.</summary>
    public int LineOf(Setting setting) => values.TryGetValue(setting.Key, out var found) ? found.Line : line;

    /// <summary>A number that has a default.</summary>
    public double Number(NumberSetting setting) => Optional(setting) ?? setting.Value;

    /// <summary>A number that must be given.</summary>
    public double Required(NumberSetting setting)
    {
        if (!Has(setting)) Missing(setting);
        return Optional(setting) ?? setting.Example;
    }

    /// <summary>A number that may be left out.</summary>
    public double? Optional(NumberSetting setting)
    {
        if (Take(setting) is not { } found) return null;
        if (setting.Kind.Parse(TomlValue.AsText(found.Content), out var value))
            return IsTaken(found.Line, setting.Refusal(value)) ? value : null;
        return Refuse<double?>(found,
            $"\"{setting.Key}\" is {TomlValue.Shown(found.Content)}; it must be {setting.Kind.InJob}", null);
    }

    /// <summary>One of a few words.</summary>
    public T Choice<T>(ChoiceSetting<T> setting) where T : struct, Enum
    {
        if (Take(setting) is not { } found) return setting.Default;
        return Words.TryParse<T>(found.Content as string, out var value)
            ? value
            : Refuse(found, $"\"{setting.Key}\" is {TomlValue.Shown(found.Content)}; it must be {setting.Allowed}",
                setting.Default);
    }

    /// <summary>True or false.</summary>
    public bool Flag(FlagSetting setting) => Take(setting) is not { } found
        ? setting.Default
        : found.Content as bool? ?? Refuse(found, $"\"{setting.Key}\" must be true or false", setting.Default);

    /// <summary>Two lengths in brackets.</summary>
    public RectangleSize? Size(SizeSetting setting)
    {
        if (Take(setting) is not { } found) return null;
        return Lengths(found.Content, 2) is [var width, var height]
            ? IsTaken(found.Line, setting.Refusal(width, height)) ? new(width, height) : null
            : Refuse<RectangleSize?>(found, $"\"{setting.Key}\" must be two lengths, such as {setting.Shown}", null);
    }

    /// <summary>Several sizes.</summary>
    public ImmutableArray<RectangleSize> Sizes(SizeSetting setting)
    {
        var sizes = Rows(setting, 2);
        foreach (var size in sizes) IsTaken(LineOf(setting), setting.Refusal(size[0], size[1]));
        return [.. sizes.Select(s => new RectangleSize(s[0], s[1]))];
    }

    /// <summary>A list of rows in brackets, each with the same number of lengths.</summary>
    public ImmutableArray<double[]> Rows(Setting setting, int count)
    {
        if (Take(setting) is not { } found) return [];
        var rows = (found.Content as object?[])?.Select(row => Lengths(row, count)).ToArray();
        return rows is not null && Array.TrueForAll(rows, r => r is not null)
            ? [.. rows.Select(r => r!)]
            : Refuse<ImmutableArray<double[]>>(found, $"\"{setting.Key}\" must be a list such as {setting.Shown}", []);
    }

    /// <summary>Two lengths in brackets, without limits.</summary>
    public double[]? Pair(Setting setting)
    {
        if (Take(setting) is not { } found) return null;
        return Lengths(found.Content, 2)
            ?? Refuse<double[]?>(found, $"\"{setting.Key}\" must be two lengths, such as [\"100mm\", \"60mm\"]", null);
    }

    /// <summary>A text; null when the key is not given or its text is empty.</summary>
    public string? Text(TextSetting setting)
    {
        if (Take(setting) is not { } found) return null;
        var text = found.Content as string ?? Refuse(found, $"\"{setting.Key}\" must be text in quotes", "");
        return text.Length == 0 ? null : text;
    }

    /// <summary>A text that must be given.</summary>
    public string RequiredText(TextSetting setting)
    {
        if (!Has(setting)) Missing(setting);
        return Text(setting) ?? "";
    }

    /// <summary>A list of texts.</summary>
    public string[] Texts(TextSetting setting)
    {
        if (Take(setting) is not { } found) return [];
        return found.Content is object?[] list && list.All(v => v is string)
            ? [.. list.Cast<string>()]
            : Refuse<string[]>(found, $"\"{setting.Key}\" must be a list of texts, such as {setting.Shown}", []);
    }

    /// <summary>A text, or a list of texts.</summary>
    public string[] OneOrMore(TextSetting setting) =>
        Take(setting) is { Content: string one } ? [one] : Texts(setting);

    /// <summary>A list of two texts in brackets each.</summary>
    public ImmutableArray<(string First, string Second)> TextPairs(TextSetting setting)
    {
        if (Take(setting) is not { } found) return [];
        return found.Content is object?[] rows
            && rows.All(r => r is object?[] { Length: 2 } pair && pair.All(t => t is string { Length: > 0 }))
            ? [.. rows.Select(r => (object?[])r!).Select(p => ((string)p[0]!, (string)p[1]!))]
            : Refuse<ImmutableArray<(string, string)>>(found, $"\"{setting.Key}\" must be a list such as {setting.Shown}", []);
    }

    /// <summary>One of several things by its name, without regard to case; null when the key is not given.</summary>
    public T? OneOf<T>(TextSetting setting, ImmutableArray<T> things, Func<T, string> nameOf) where T : class =>
        Take(setting) is { } found ? OneOf(setting, found, found.Content, things, nameOf) : null;

    /// <summary>Several things by their names.</summary>
    public ImmutableArray<T> SomeOf<T>(TextSetting setting, ImmutableArray<T> things, Func<T, string> nameOf) where T : class =>
        Take(setting) is not { } found ? [] : found.Content is object?[] list
            ? [.. list.Select(v => OneOf(setting, found, v, things, nameOf)).OfType<T>()]
            : Refuse<ImmutableArray<T>>(found, $"\"{setting.Key}\" must be a list of names", []);

    /// <summary>One of the job's boards by its name, or one of the catalog by its id.</summary>
    public Stock Board(TextSetting setting, JobBoards boards)
    {
        var wanted = RequiredText(setting);
        if (boards.Find(wanted) is { } found) return found;
        // A job without stock is a mistake of its own.
        if (wanted.Length > 0 && !boards.Own.IsEmpty)
            faults.Add(LineOf(setting), $"{Place}the stock \"{wanted}\" is neither a stock of this job "
                + $"({string.Join(", ", boards.Own.Select(s => s.Name))}) nor in the catalog; see 'buckgen catalog'");
        return boards.Own.FirstOrDefault() ?? new(wanted, StockSettings.Thickness.Example);
    }

    /// <summary>All keys with their values as text.</summary>
    public ImmutableDictionary<string, string> AllTexts()
    {
        foreach (var key in values.Keys) usedKeys.Add(key);
        return values.ToImmutableDictionary(v => v.Key, v => TomlValue.AsText(v.Value.Content) ?? "");
    }

    /// <summary>Notes unknown keys; names the one that was probably meant, or all that are known.</summary>
    public void RejectUnknownKeys()
    {
        foreach (var (key, value) in values.Where(v => !usedKeys.Contains(v.Key)))
            faults.Add(value.Line, $"{Place}\"{key}\" is not known; {(NearestWord.Find(key, usedKeys) is { } near
                ? $"the nearest known is \"{near}\""
                : $"known here: {string.Join(", ", usedKeys.Order(StringComparer.Ordinal))}")}");
    }

    /// <summary>Notes a mistake in a value.</summary>
    public void Fault(Setting setting, string what) => faults.Add(LineOf(setting), what);

    /// <summary>Notes a mistake in the table as a whole.</summary>
    public void Fault(string what) => faults.Add(line, what);

    /// <summary>Runs a check of several values together; notes its refusal at a line.</summary>
    public void Check(Setting setting, Action check)
    {
        try
        {
            check();
        }
        catch (SpecException refused)
        {
            IsTaken(LineOf(setting), refused.Message);
        }
    }

    private string Place => name.Length == 0 ? ""
        : $"in {JobSettings.Tables.FirstOrDefault(t => t.Name == name)?.Heading ?? $"[{name}]"} ";

    private void Missing(Setting setting)
    {
        // A misspelt key is one mistake; it is noted as unknown.
        var known = JobSettings.Tables.Where(t => t.Name == name).SelectMany(t => t.Settings).Select(s => s.Key).ToHashSet();
        if (values.Keys.Any(key => !known.Contains(key) && NearestWord.Find(key, known) == setting.Key)) return;
        faults.Add(line, $"{Place}\"{setting.Key}\" is missing; add {setting.Key} = {setting.Shown}");
    }

    /// <summary>True when there is no refusal; notes one that starts a sentence.</summary>
    private bool IsTaken(int at, string? refusal)
    {
        if (refusal is null) return true;
        faults.Add(at, char.ToLowerInvariant(refusal[0]) + refusal[1..].TrimEnd('.'));
        return false;
    }

    private T Refuse<T>(JobValue value, string what, T instead)
    {
        faults.Add(value.Line, what);
        return instead;
    }

    private T? OneOf<T>(TextSetting setting, JobValue found, object? value, ImmutableArray<T> things, Func<T, string> nameOf)
        where T : class =>
        things.FirstOrDefault(t => string.Equals(nameOf(t), value as string, StringComparison.OrdinalIgnoreCase))
        ?? Refuse<T?>(found, things.IsEmpty
            ? $"\"{setting.Key}\" names {TomlValue.Shown(value)}, but no plug-in provides any"
            : $"\"{setting.Key}\" is {TomlValue.Shown(value)}; it must be {string.Join(" or ", things.Select(nameOf))}", null);

    private JobValue? Take(Setting setting)
    {
        usedKeys.Add(setting.Key);
        return values.TryGetValue(setting.Key, out var found) ? found : null;
    }

    private static double[]? Lengths(object? row, int count)
    {
        if (row is not object?[] cells || cells.Length != count) return null;
        var lengths = new double[count];
        for (var i = 0; i < count; i++)
            if (!QuantityText.TryLength(TomlValue.AsText(cells[i]), out lengths[i])) return null;
        return lengths;
    }

    /// <summary>What a key is given, and its line.</summary>
    private sealed record JobValue(object? Content, int Line);
}
