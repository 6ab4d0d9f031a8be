using System.Globalization;
using Tomlyn.Syntax;

namespace BuckGen.Quantities;

/// <summary>Values of TOML files as plain objects, and as text for messages.</summary>
internal static class TomlValue
{
    /// <summary>Text, number, flag, list or table; other values as their text.</summary>
    public static object? ToObject(ValueSyntax? value) => value switch
    {
        StringValueSyntax text => text.Value,
        IntegerValueSyntax whole => whole.Value,
        FloatValueSyntax number => number.Value,
        BooleanValueSyntax flag => flag.Value,
        ArraySyntax list => list.Items.Select(i => ToObject(i.Value)).ToArray(),
        // A key given twice keeps its last value here; the parser's own check refuses it before.
        InlineTableSyntax table => table.Items.Select(i => i.KeyValue).OfType<KeyValueSyntax>()
            .GroupBy(KeyOf, StringComparer.Ordinal).ToDictionary(g => g.Key, g => ToObject(g.Last().Value)),
        _ => value?.ToString(),
    };

    /// <summary>A key without its quotes.</summary>
    public static string KeyOf(KeyValueSyntax item) => item.Key?.ToString().Trim().Trim('"') ?? "";

    /// <summary>What a person would write for the value, to be understood as a quantity.</summary>
    public static string? AsText(object? value) => value as string ?? Convert.ToString(value, CultureInfo.InvariantCulture);

    /// <summary>The value in a message.</summary>
    public static string Shown(object? value) => value switch
    {
        string text => $"\"{text}\"",
        object?[] list => $"[{string.Join(", ", list.Select(Shown))}]",
        Dictionary<string, object?> => "a table",
        _ => AsText(value) ?? "nothing",
    };
}
