namespace BuckGen.Dxf.Reading.Groups;

/// <summary>Text from a file, cut to what a message can bear: a value may be as long as its file.</summary>
internal static class Excerpt
{
    private const int MaxLength = 40;

    /// <summary>The beginning of a text in one line, with a mark where more follows.</summary>
    public static string Shorten(string text) =>
        text.Length <= MaxLength && !text.Any(char.IsControl)
            ? text
            : string.Concat(text.Take(MaxLength).Select(c => char.IsControl(c) ? '?' : c)) + (text.Length > MaxLength ? "…" : "");
}
