using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Quantities;
using Tomlyn.Syntax;

namespace BuckGen.Jobs;

/// <summary>One table of a job file. Values are read by key; keys that are left over at the end are unknown.</summary>
internal sealed class JobTable(string file, string name, int line)
{
    private readonly Dictionary<string, (object? Value, int Line)> values = new(StringComparer.Ordinal);
    private readonly HashSet<string> usedKeys = new(StringComparer.Ordinal);

    /// <summary>Remembers a key; a key given twice is refused.</summary>
    public void Add(KeyValueSyntax item)
    {
        var key = TomlValue.KeyOf(item);
        var at = item.Span.Start.Line + 1;
        if (!values.TryAdd(key, (TomlValue.ToObject(item.Value), at))) throw Fault(at, $"\"{key}\" is given twice; remove one");
    }

    public string Text(string key, string otherwise) => Take(key) is not { } found
        ? otherwise
        : found.Value as string ?? throw Fault(found.Line, $"\"{key}\" must be text in quotes");

    /// <summary>True when the key is given.</summary>
    public bool Has(string key)
    {
        usedKeys.Add(key);
        return values.ContainsKey(key);
    }

    /// <summary>True when the key is given as a list.</summary>
    public bool IsList(string key) => values.TryGetValue(key, out var found) && found.Value is object?[];

    public string RequiredText(string key) =>
        values.ContainsKey(key) ? Text(key, "") : throw Fault(line, $"{Place}\"{key}\" is missing; add {key} = \"...\"");

    public bool Flag(string key, bool otherwise) => Take(key) is not { } found
        ? otherwise
        : found.Value as bool? ?? throw Fault(found.Line, $"\"{key}\" must be true or false");

    public double Length(string key, double otherwise) => Quantity(key, QuantityText.TryLength, "a length such as \"12mm\" or \"1/2in\"") ?? otherwise;

    public double RequiredLength(string key) => Quantity(key, QuantityText.TryLength, "a length such as \"12mm\" or \"1/2in\"")
        ?? throw Fault(line, $"{Place}\"{key}\" is missing; add {key} = \"36mm\"");

    public double? OptionalLength(string key) => Quantity(key, QuantityText.TryLength, "a length such as \"12mm\" or \"1/2in\"");

    public double Angle(string key, double otherwise) => OptionalAngle(key) ?? otherwise;

    public double? OptionalAngle(string key) => Quantity(key, QuantityText.TryAngle, "an angle such as \"5deg\"");

    public double? OptionalPressure(string key) => Quantity(key, QuantityText.TryPressure, "a pressure such as \"70kPa\" or \"20inHg\"");

    public double? OptionalNumber(string key) => Quantity(key, QuantityText.TryNumber, "a number");

    public double? OptionalPerCent(string key) => Quantity(key, QuantityText.TryPerCent, "a share such as \"0.5%\"");

    public double Number(string key, double otherwise) =>
        OptionalNumber(key) ?? otherwise;

    /// <summary>One of the words of an enumeration, in lower case.</summary>
    public T Choice<T>(string key, T otherwise) where T : struct, Enum
    {
        if (Take(key) is not { } found) return otherwise;
        return Words.TryParse<T>(found.Value as string, out var value)
            ? value
            : throw Fault(found.Line, $"\"{key}\" is {TomlValue.Shown(found.Value)}; it must be {Words.List<T>()}");
    }

    /// <summary>One of several things by its name, without regard to case; null when the key is not given.</summary>
    public T? OneOf<T>(string key, ImmutableArray<T> things, Func<T, string> nameOf) where T : class =>
        Take(key) is { } found ? OneOf(key, found, found.Value, things, nameOf) : null;

    /// <summary>Several things by their names.</summary>
    public ImmutableArray<T> SomeOf<T>(string key, ImmutableArray<T> things, Func<T, string> nameOf) where T : class =>
        Take(key) is not { } found ? [] : found.Value is object?[] list
            ? [.. list.Select(v => OneOf(key, found, v, things, nameOf))]
            : throw Fault(found.Line, $"\"{key}\" must be a list of names");

    /// <summary>All keys with their values as text.</summary>
    public ImmutableDictionary<string, string> AllTexts()
    {
        foreach (var key in values.Keys) usedKeys.Add(key);
        return values.ToImmutableDictionary(v => v.Key, v => TomlValue.AsText(v.Value.Value) ?? "");
    }

    /// <summary>Two lengths in brackets.</summary>
    public (double Width, double Height)? Size(string key)
    {
        if (Take(key) is not { } found) return null;
        return found.Value is object?[] { Length: 2 } pair
            && QuantityText.TryLength(TomlValue.AsText(pair[0]), out var width) && QuantityText.TryLength(TomlValue.AsText(pair[1]), out var height)
                ? (width, height)
                : throw Fault(found.Line, $"\"{key}\" must be two lengths, such as [\"600mm\", \"400mm\"]");
    }

    /// <summary>A list of equally many lengths in brackets each.</summary>
    public ImmutableArray<double[]> LengthLists(string key, int count, string example)
    {
        if (Take(key) is not { } found) return [];
        var rows = (found.Value as object?[])?.Select(row => Lengths(row, count)).ToArray();
        return rows is not null && Array.TrueForAll(rows, r => r is not null)
            ? [.. rows.Select(r => r!)]
            : throw Fault(found.Line, $"\"{key}\" must be a list such as {example}");
    }

    /// <summary>A list of texts.</summary>
    public string[] Texts(string key)
    {
        if (Take(key) is not { } found) return [];
        return found.Value is object?[] list && list.All(v => v is string)
            ? [.. list.Cast<string>()]
            : throw Fault(found.Line, $"\"{key}\" must be a list of texts, such as [\"CUT\"]");
    }

    /// <summary>A list of two texts in brackets each.</summary>
    public ImmutableArray<(string First, string Second)> TextPairs(string key, string example)
    {
        if (Take(key) is not { } found) return [];
        return found.Value is object?[] rows && rows.All(r => r is object?[] { Length: 2 } pair && pair.All(t => t is string { Length: > 0 }))
            ? [.. rows.Select(r => (object?[])r!).Select(p => ((string)p[0]!, (string)p[1]!))]
            : throw Fault(found.Line, $"\"{key}\" must be a list such as {example}");
    }

    /// <summary>One of the job's stocks, by its name.</summary>
    public Stock Stock(string key, ImmutableArray<Stock> stock)
    {
        var wanted = RequiredText(key);
        return stock.FirstOrDefault(s => s.Name == wanted)
            ?? throw Fault(line, $"{Place}the stock \"{wanted}\" is not one of the job's: {string.Join(", ", stock.Select(s => s.Name))}");
    }

    /// <summary>Refuses unknown keys and lists the known ones.</summary>
    public void RejectUnknownKeys()
    {
        foreach (var (key, (_, at)) in values)
            if (!usedKeys.Contains(key))
                throw Fault(at, $"{Place}\"{key}\" is not known; known here: {string.Join(", ", usedKeys.Order(StringComparer.Ordinal))}");
    }

    public JobFileException Fault(int at, string what) => new($"{file}, line {at}: {what}.");

    public int Line => line;

    /// <summary>The line of a key, or that of the table when it is not given.</summary>
    public int LineOf(string key) => values.TryGetValue(key, out var found) ? found.Line : line;

    private string Place => name.Length == 0 ? "" : $"in [{name}] ";

    private T OneOf<T>(string key, (object? Value, int Line) found, object? value, ImmutableArray<T> things, Func<T, string> nameOf) where T : class =>
        things.FirstOrDefault(t => string.Equals(nameOf(t), value as string, StringComparison.OrdinalIgnoreCase))
        ?? throw Fault(found.Line, things.IsEmpty
            ? $"\"{key}\" names {TomlValue.Shown(value)}, but no plug-in provides any"
            : $"\"{key}\" is {TomlValue.Shown(value)}; it must be {string.Join(" or ", things.Select(nameOf))}");

    private delegate bool Parser(string? text, out double value);

    private double? Quantity(string key, Parser parse, string kind)
    {
        if (Take(key) is not { } found) return null;
        return parse(TomlValue.AsText(found.Value), out var value)
            ? value
            : throw Fault(found.Line, $"\"{key}\" is {TomlValue.Shown(found.Value)}; it must be {kind}");
    }

    private (object? Value, int Line)? Take(string key)
    {
        usedKeys.Add(key);
        return values.TryGetValue(key, out var found) ? found : null;
    }

    private static double[]? Lengths(object? row, int count)
    {
        if (row is not object?[] cells || cells.Length != count) return null;
        var lengths = new double[count];
        for (var i = 0; i < count; i++)
            if (!QuantityText.TryLength(TomlValue.AsText(cells[i]), out lengths[i])) return null;
        return lengths;
    }
}
