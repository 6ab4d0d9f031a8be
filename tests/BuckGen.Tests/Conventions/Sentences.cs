using System.Text.RegularExpressions;

namespace BuckGen.Tests.Conventions;

/// <summary>Takes a text apart into its sentences and counts their words.</summary>
internal static partial class Sentences
{
    /// <summary>
    /// Headings, items, table cells and the sentences of paragraphs; code blocks left out, code in a line taken as one word.
    /// </summary>
    public static IEnumerable<string> Of(string text)
    {
        var plain = Target().Replace(Code().Replace(Block().Replace(text, "\n"), "Code"), "]");
        return Break().Split(Item().Replace(plain, "\n\n")).SelectMany(b => End().Split(Space().Replace(b, " ").Trim()))
            .Where(s => s.Length > 0);
    }

    public static int Words(string sentence) => Word().Count(sentence);

    [GeneratedRegex("^```.*?^```|^    .*?$", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Block();

    [GeneratedRegex(@"`[^`\n]*(\n[^`\n]+)?`")]
    private static partial Regex Code();

    [GeneratedRegex(@"\]\([^)\n]*\)")]
    private static partial Regex Target();

    [GeneratedRegex("^- ", RegexOptions.Multiline)]
    private static partial Regex Item();

    [GeneratedRegex(@"\n\s*\n|\||(?<=^#[^\n]*)\n", RegexOptions.Multiline)]
    private static partial Regex Break();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    [GeneratedRegex(@"(?<=[.!?:]\**)\s+(?=[A-Z0-9*`\[(])")]
    private static partial Regex End();

    [GeneratedRegex(@"[\p{L}\d][\p{L}\d'./-]*")]
    private static partial Regex Word();
}
