using BuckGen.Plugins;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the plug-ins of a run.</summary>
internal static class PluginPrinter
{
    public static void Print(Printer printer, PluginSet plugins, string? ownFolder)
    {
        foreach (var plugin in plugins.Plugins)
        {
            printer.Line($"{plugin.Name}{(plugin.Version.Length > 0 ? $" {plugin.Version}" : "")}");
            printer.Line($"  from {plugin.Path}");
            foreach (var part in plugin.Parts) printer.Line($"  {part.Kind} \"{part.Name}\"");
            if (plugin.Problem is { } problem) printer.Line($"  left out{(plugin.Parts.IsEmpty ? "" : " in part")}: {problem}");
        }

        if (plugins.Plugins.IsEmpty) printer.Line("No plug-ins.");
        if (ownFolder is not null) printer.Line($"Your own folder of plug-ins: {ownFolder}");
    }
}
