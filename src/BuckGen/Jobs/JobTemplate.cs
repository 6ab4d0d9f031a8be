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
        var escaped = outlineFile.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);
        return reader.ReadToEnd().Replace("\"outline.svg\"  ", $"\"{escaped}\"  ", StringComparison.Ordinal);
    }
}
