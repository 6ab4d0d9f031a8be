namespace BuckGen.Dxf.Reading.Groups;

/// <summary>Text from a file, cut to what a message can bear: a value may be as long as its file.</summary>
internal static class Excerpt
{
    private const int Most = 40;

    /// <summary>The beginning of a text in one line, with a mark where more follows.</summary>
    public static string Of(string text) =>
        text.Length <= Most && !text.Any(char.IsControl)
            ? text
            : string.Concat(text.Take(Most).Select(c => char.IsControl(c) ? '?' : c)) + (text.Length > Most ? "…" : "");
}
