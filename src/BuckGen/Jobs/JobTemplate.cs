using BuckGen.Quantities;

namespace BuckGen.Jobs;

/// <summary>A job file with every setting and a comment beside it, to start from.</summary>
public static class JobTemplate
{
    /// <summary>The text, with the default settings.</summary>
    /// <param name="outlineFile">The outline's file name to put in.</param>
    /// <exception cref="JobFileException">The name holds half a pair of surrogates, which TOML can't hold.</exception>
    public static string Text(string outlineFile)
    {
        ArgumentNullException.ThrowIfNull(outlineFile);
        if (string.Concat(outlineFile.EnumerateRunes()) != outlineFile)
            throw new JobFileException($"The drawing's name \"{VisibleText.Escape(outlineFile)}\" holds half a character, which a job file can't hold; rename the drawing.");
        using var stream = typeof(JobTemplate).Assembly.GetManifestResourceStream("BuckGen.Jobs.template.toml")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Replace("file = \"outline.svg\"", $"file = \"{Escaped(outlineFile)}\"", StringComparison.Ordinal);
    }

    /// <summary>
    /// The text as it stands between quotes in TOML; hidden characters are written as codes, which mean the same.
    /// </summary>
    private static string Escaped(string text) => string.Concat(text.EnumerateRunes().Select(r => r.Value switch
    {
        '"' or '\\' => $"\\{r}",
        _ when !VisibleText.IsHidden(r) => r.ToString(),
        <= 0xFFFF => $"\\u{r.Value:X4}",
        _ => $"\\U{r.Value:X8}",
    }));
}
