using System.Text;
using BuckGen.Jobs;
using BuckGen.Settings;

namespace BuckGen.Tests.Conventions;

/// <summary>The page of the guides that lists all settings, made from their declarations.</summary>
internal static class SettingsPage
{
    private const string Head =
        """
        # Settings

        All settings of a job file, table by table. `buckgen new job.toml --all` writes a file that has them all.
        Lengths take mm, cm, in, ft and fractions ("1/2in"); a bare number is mm.
        A few settings are also options of the command line, for work without a job file.

        A value out of its range is refused with its line. All mistakes of a file are reported at once.

        """;

    private const string Foot =
        """

        ## [settings.NAME]

        Settings for the plug-in part of that name; the plug-in says which it takes.

        """;

    /// <summary>The page.</summary>
    public static string Text()
    {
        var page = new StringBuilder(Head.ReplaceLineEndings("\n"));
        foreach (var table in JobSettings.Tables.GroupBy(t => t.Heading))
        {
            page.Append("\n## ").Append(table.Key.Length == 0 ? "Above the tables" : table.Key).Append("\n\n");
            if (table.First().Intro.Length > 0) page.Append(table.First().Intro).Append(".\n\n");
            page.Append("| key | what it sets | default | range | option | source |\n| --- | --- | --- | --- | --- | --- |\n");
            foreach (var setting in table.SelectMany(t => t.Settings)) page.Append(Row(setting)).Append('\n');
        }

        return page.Append(Foot.ReplaceLineEndings("\n")).ToString();
    }

    private static string Row(Setting setting)
    {
        string[] cells =
        [
            $"`{setting.Key}`", setting.Meaning, setting.IsNeeded ? "needed" : setting.Usual, setting.Allowed,
            setting.Option is { } option ? $"`{option}`" : "", setting.Source,
        ];
        return $"| {string.Join(" | ", cells)} |";
    }
}
