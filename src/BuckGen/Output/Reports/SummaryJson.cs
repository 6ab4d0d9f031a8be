using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using BuckGen.Intake.Catalogs;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>
/// Reports as JSON text: UTF-8, two spaces of indent, LF, names in camelCase, hidden characters as codes, a line end at the end.
/// </summary>
public static class SummaryJson
{
    private static readonly SummaryTypes Types = new(new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        // Kept readable for people; the file is JSON only, never put into a page unescaped.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <summary>The bytes of a summary.</summary>
    public static ImmutableArray<byte> Write(Summary summary) => Bytes(summary, Types.Summary);

    /// <summary>A summary from its bytes.</summary>
    /// <param name="summary">What <see cref="Write(Summary)"/> gave.</param>
    /// <exception cref="JsonException">They are no summary of this version.</exception>
    public static Summary Read(ImmutableArray<byte> summary) =>
        JsonSerializer.Deserialize(summary.AsSpan(), Types.Summary) ?? throw new JsonException("The summary is empty.");

    /// <summary>The bytes of a report on an outline.</summary>
    public static ImmutableArray<byte> Write(OutlineReport report) => Bytes(report, Types.OutlineReport);

    /// <summary>The bytes of a catalog.</summary>
    public static ImmutableArray<byte> Write(Catalog catalog) => Bytes(catalog, Types.Catalog);

    private static ImmutableArray<byte> Bytes<T>(T value, JsonTypeInfo<T> type) =>
        [.. Encoding.UTF8.GetBytes(Visible(JsonSerializer.Serialize(value, type))), (byte)'\n'];

    /// <summary>
    /// The same JSON with hidden characters as \u codes: it is printed on terminals too. They stand in strings only, where a code
    /// means the same.
    /// </summary>
    private static string Visible(string json)
    {
        if (!json.EnumerateRunes().Any(IsHidden)) return json;
        return string.Concat(json.EnumerateRunes().Select(r => IsHidden(r)
            ? string.Concat(r.ToString().Select(c => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}")))
            : r.ToString()));

        static bool IsHidden(Rune character) => character.Value != '\n' && VisibleText.IsHidden(character);
    }
}
