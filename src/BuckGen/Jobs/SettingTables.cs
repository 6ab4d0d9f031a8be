using BuckGen.Plugins;

namespace BuckGen.Jobs;

/// <summary>Hands the tables [settings.NAME] of a job file to the plug-in parts of that name.</summary>
internal static class SettingTables
{
    private const string Prefix = "settings.";

    /// <summary>True for the name of such a table.</summary>
    public static bool IsOne(string table) => table.StartsWith(Prefix, StringComparison.Ordinal) && table.Length > Prefix.Length;

    /// <summary>The extensions with their settings; what a part refuses is noted as a mistake.</summary>
    public static Extensions Apply(IReadOnlyDictionary<string, JobTable> tables, Extensions extensions)
    {
        foreach (var (key, table) in tables.Where(t => IsOne(t.Key)).OrderBy(t => t.Value.Line))
        {
            var name = key[Prefix.Length..].Trim('"');
            var settings = table.AllTexts();
            var takers = extensions.TakingSettings(name);
            if (takers.IsEmpty) table.Fault($"no plug-in part called \"{name}\" takes settings; see 'buckgen plugins'");
            foreach (var taker in takers)
                if (Set(taker, settings, table) is { } set) extensions = extensions.With(set);
        }

        return extensions;
    }

    private static object? Set(IWithSettings taker, IReadOnlyDictionary<string, string> settings, JobTable table)
    {
        try
        {
            return taker.With(settings) ?? throw new ArgumentException("it gave nothing");
        }
        catch (Exception refused) when (refused is not OperationCanceledException)
        {
            table.Fault($"the plug-in refuses its settings: {refused.Message.ReplaceLineEndings(" ").TrimEnd('.')}");
            return null;
        }
    }
}
