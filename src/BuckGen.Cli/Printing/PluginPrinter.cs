using System.Collections.Immutable;
using BuckGen.Plugins;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the plug-ins of a run.</summary>
internal static class PluginPrinter
{
    private const string GoesOn = "left out, the job goes on";

    /// <summary>What happens to a job; the tests check each cell.</summary>
    private static readonly ImmutableArray<ImmutableArray<string>> Promises =
    [
        ["throws, or gives what can't be used", GoesOn, GoesOn],
        ["takes longer than plugin-seconds", GoesOn, GoesOn],
        ["throws on a thread of its own", "named, the job goes on", "named, the job goes on"],
        ["exits", "ends the job with one line", GoesOn],
        ["overflows the stack, crashes", "ends the program", GoesOn],
        ["takes all memory", "may end the program", GoesOn],
        ["reads, changes or sends your files", "not prevented", "not prevented"],
    ];

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
        printer.Table([new("A plug-in that"), new("as usual"), new("with isolate-plugins")],
            Promises.Select(row => (IReadOnlyList<string>)row));
        printer.Line(
            "In every case the output folder holds the last complete result or the new one. The findings name every "
            + "plug-in that is left out.");
    }
}
