namespace BuckGen.Intake.Outlines;

/// <summary>Text from a drawing, cut to fit a message: a name may be as long as its file.</summary>
internal static class Excerpt
{
    private const int MaxLength = 40;

    /// <summary>The beginning of a text in one line, with a mark where more follows.</summary>
    /// <param name="text">The text.</param>
    /// <param name="maxLength">How many characters of it are shown.</param>
    public static string Shorten(string text, int maxLength = MaxLength) =>
        text.Length <= maxLength && !text.Any(char.IsControl)
            ? text
            : string.Concat(text.Take(maxLength).Select(c => char.IsControl(c) ? ' ' : c)) + (text.Length > maxLength ? "…" : "");

    /// <summary>The first few of a list, and how many there are beside them.</summary>
    /// <param name="items">The list; each item is cut as well.</param>
    /// <param name="named">How many are named.</param>
    public static string ShortenList(IReadOnlyCollection<string> items, int named) =>
        string.Join(", ", items.Take(named).Select(i => Shorten(i)))
            + (items.Count > named ? $" and {items.Count - named} more" : "");
}
