using System.Collections.Immutable;
using BuckGen.Quantities;

namespace BuckGen.Intake.Catalogs;

/// <summary>Reads the figures of one entry: value, unit and sources.</summary>
internal sealed class FigureReading(CatalogTable table, ImmutableDictionary<string, string> sources)
{
    /// <summary>The sources of the entry, for figures that name none.</summary>
    private readonly ImmutableArray<string> common = table.Take("source") is { } given
        ? Sources(table, "source", given, sources) : [];

    /// <summary>The figure, or null when it is not given.</summary>
    public CatalogFigure? Read(FigureKind kind)
    {
        if (table.Take(kind.Key) is not { } given) return null;
        var (value, from) = given is Dictionary<string, object?> parts ? Parts(kind, parts) : (given, common);
        if (from.IsEmpty)
            throw table.Fault(kind.Key,
                $"\"{kind.Key}\" has no source; write {kind.Key} = {{ value = {TomlValue.Shown(value)}, source = \"...\" "
                + $"}} or give the entry a source, such as source = \"measured\"");
        var figure = new CatalogFigure { Key = kind.Key, Name = kind.Name, Unit = kind.Unit, Sources = from };
        return kind.Limits is { } limits
            ? figure with { Range = Range(kind, limits, value) }
            : figure with { Text = Text(kind, value) };
    }

    private (object? Value, ImmutableArray<string> From) Parts(FigureKind kind, Dictionary<string, object?> parts)
    {
        if (parts.Keys.FirstOrDefault(k => k is not ("value" or "source")) is { } strange)
            throw table.Fault(kind.Key, $"\"{kind.Key}\" has \"{strange}\", which is not known; known are value and source");
        return parts.TryGetValue("value", out var value)
            ? (value, parts.TryGetValue("source", out var source) ? Sources(table, kind.Key, source, sources) : common)
            : throw table.Fault(kind.Key, $"\"{kind.Key}\" has no value; add value = ...");
    }

    private FigureRange Range(FigureKind kind, FigureRange limits, object? value)
    {
        var numbers = (value as object?[] ?? [value]).Select(v => Number(kind, limits, v)).ToArray();
        if (numbers.Length > 2 || numbers.Length == 0 || (value is object?[] && !kind.MayBeRange))
            throw table.Fault(kind.Key, $"\"{kind.Key}\" is {TomlValue.Shown(value)}; it must be {Shape(kind)}");
        return numbers[0] <= numbers[^1]
            ? new(numbers[0], numbers[^1])
            : throw table.Fault(kind.Key, $"\"{kind.Key}\" is {TomlValue.Shown(value)}; the smaller number must come first");
    }

    private double Number(FigureKind kind, FigureRange limits, object? value)
    {
        var text = value is bool or Dictionary<string, object?> or object?[]? null : TomlValue.AsText(value);
        double number;
        var understood = kind.Unit switch
        {
            "mm" => QuantityText.TryLength(text, out number),
            "degrees" => QuantityText.TryAngle(text, out number),
            "%" => QuantityText.TryPerCent(text, out number),
            _ => QuantityText.TryNumber(text, out number),
        };
        if (!understood) throw table.Fault(kind.Key, $"\"{kind.Key}\" is {TomlValue.Shown(value)}; it must be {Shape(kind)}");
        return number >= limits.Low && number <= limits.High
            ? number
            : throw table.Fault(kind.Key, FormattableString.Invariant(
                $"\"{kind.Key}\" is {number}; it must be from {limits.Low} to {limits.High} {kind.Unit}").TrimEnd());
    }

    private string Text(FigureKind kind, object? value) =>
        value is string { Length: > 0 } text && (kind.Words.Length == 0 || kind.Words.Contains(text))
            ? text
            : throw table.Fault(kind.Key,
                $"\"{kind.Key}\" is {TomlValue.Shown(value)}; it must be "
                + $"{(kind.Words.Length == 0 ? "text in quotes" : string.Join(" or ", kind.Words.Select(w => $"\"{w}\"")))}");

    private static string Shape(FigureKind kind) =>
        $"a number{(kind.Unit.Length > 0 ? $" of {kind.Unit}"
            : "")}{(kind.MayBeRange ? ", or two in brackets: [min, max]" : "")}";

    private static ImmutableArray<string> Sources(CatalogTable table, string key, object? given,
        ImmutableDictionary<string, string> known)
    {
        var texts = given as object?[] ?? [given];
        if (texts.Length == 0 || !texts.All(t => t is string { Length: > 0 }))
            throw table.Fault(key, $"the source of \"{key}\" must be text in quotes, or a list of texts");
        return [.. texts.Cast<string>().Select(t => known.GetValueOrDefault(t, t))];
    }
}
