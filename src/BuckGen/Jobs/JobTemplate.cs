using System.Text;
using BuckGen.Intake.Outlines;
using BuckGen.Quantities;
using BuckGen.Settings;

namespace BuckGen.Jobs;

/// <summary>
/// A job file to start from: a short one for a kind of work, or one with every setting and a comment beside it.
/// </summary>
public static class JobTemplate
{
    /// <summary>Where the comments begin.</summary>
    private const int CommentColumn = 30;

    private const string Head =
        """
        # A BuckGen job. Lengths take mm, cm, in, ft and fractions ("1/2in"); a bare number is mm.
        # Run it with: buckgen make job.toml

        """;

    /// <summary>The text, with the default settings.</summary>
    /// <param name="outlineFile">The outline's file name to put in.</param>
    /// <exception cref="JobFileException">The name holds half a pair of surrogates, which TOML can't hold.</exception>
    public static string Text(string outlineFile)
    {
        RequireWhole(outlineFile);
        var text = new StringBuilder(Head);
        foreach (var table in JobSettings.Tables)
        {
            if (table.Name.Length > 0) text.Append('\n');
            if (table.Intro.Length > 0) text.Append("# ").Append(table.Intro).Append(":\n");
            if (table.Name.Length > 0) text.Append(table.IsSet ? "" : "# ").Append(table.Heading).Append('\n');
            foreach (var setting in table.Settings)
                text.Append(Line(setting, setting == OutlineSettings.File ? $"\"{Escaped(outlineFile)}\"" : setting.Shown))
                    .Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The text of a short job, with what a kind of work needs.</summary>
    /// <param name="work">The kind of work.</param>
    /// <param name="outlineFile">The outline's file name to put in.</param>
    /// <exception cref="JobFileException">The name holds half a pair of surrogates, which TOML can't hold.</exception>
    public static string ForWork(JobWork work, string outlineFile)
    {
        RequireWhole(outlineFile);
        var text = new StringBuilder(Head);
        text.Append("# 'buckgen new --all' writes every setting there is.\n");
        foreach (var (table, set) in ShortJob.Tables(work))
        {
            if (table.Name.Length > 0) text.Append('\n').Append(table.Heading).Append('\n');
            foreach (var (setting, value) in set)
                text.Append(Line(setting with { IsSet = true },
                    value ?? (setting == OutlineSettings.File ? $"\"{Escaped(outlineFile)}\"" : setting.Shown))).Append('\n');
        }

        return text.ToString();
    }

    private static void RequireWhole(string outlineFile)
    {
        ArgumentNullException.ThrowIfNull(outlineFile);
        if (string.Concat(outlineFile.EnumerateRunes()) != outlineFile)
            throw new JobFileException(
                $"The drawing's name \"{VisibleText.Escape(outlineFile)}\" holds half a character, which a job file can't "
                + "hold; rename the drawing.");
    }

    private static string Line(Setting setting, string value)
    {
        var start = $"{(setting.IsSet ? "" : "# ")}{setting.Key} = {value}";
        return $"{start.PadRight(Math.Max(CommentColumn, start.Length + 2))}# {setting.Meaning}";
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
