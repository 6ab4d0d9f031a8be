namespace BuckGen.Jobs;

/// <summary>A job file with every setting and a comment beside it, to start from.</summary>
public static class JobTemplate
{
    /// <summary>The text, with the default settings.</summary>
    /// <param name="outlineFile">The outline's file name to put in.</param>
    public static string Text(string outlineFile)
    {
        using var stream = typeof(JobTemplate).Assembly.GetManifestResourceStream("BuckGen.Jobs.template.toml")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Replace("file = \"outline.svg\"", $"file = \"{Escaped(outlineFile)}\"", StringComparison.Ordinal);
    }

    /// <summary>The text as it stands between quotes in TOML.</summary>
    private static string Escaped(string text) => string.Concat(text.Select(c => c switch
    {
        '"' or '\\' => $"\\{c}",
        < ' ' or '\x7f' => $"\\u{(int)c:X4}",
        _ => c.ToString(),
    }));
}
