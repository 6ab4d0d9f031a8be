using BuckGen.Plugins;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the plug-ins of a run.</summary>
internal static class PluginPrinter
{
    public static void Print(IAnsiConsole console, PluginSet plugins, string? ownFolder)
    {
        foreach (var plugin in plugins.Plugins)
        {
            console.WriteLine($"{plugin.Name}{(plugin.Version.Length > 0 ? $" {plugin.Version}" : "")}");
            console.WriteLine($"  from {plugin.Path}");
            foreach (var part in plugin.Parts) console.WriteLine($"  {part.Kind} \"{part.Name}\"");
            if (plugin.Problem is { } problem) console.WriteLine($"  left out{(plugin.Parts.IsEmpty ? "" : " in part")}: {problem}");
        }

        if (plugins.Plugins.IsEmpty) console.WriteLine("No plug-ins.");
        if (ownFolder is not null) console.WriteLine($"Your own folder of plug-ins: {ownFolder}");
    }
}
