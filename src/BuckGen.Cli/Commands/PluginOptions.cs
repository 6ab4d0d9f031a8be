using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Jobs;
using BuckGen.Plugins;

namespace BuckGen.Cli.Commands;

/// <summary>
/// Where plug-ins come from: the maker's own folder, a folder named on the command line, files that a job names. Never the
/// current folder by itself. Also how they are run.
/// </summary>
internal sealed class PluginOptions
{
    /// <summary>The name of the option for a process of their own.</summary>
    public const string Isolate = "--isolate-plugins";

    private readonly Option<string?> folder =
        new("--plugins")
        {
            Description = "Also load the plug-ins in this folder; 'buckgen plugins' lists them.",
            HelpName = "DIR"
        };

    private readonly Option<bool> isolate = QuantityOption.Create(
        PluginSettings.Isolate, "Run plug-ins in a process of their own; 'buckgen plugins' explains why.");

    private readonly Option<double?> seconds = QuantityOption.Create(PluginSettings.Seconds);

    /// <summary>All of them; they also apply to a job file.</summary>
    public Option[] All => [folder, isolate, seconds];

    public void AddTo(HelpedCommand command) => command.Add(OptionGroup.PlugIns, All);

    /// <summary>What the command line adds to a job: plug-ins, and how they are called.</summary>
    /// <param name="parsed">The arguments.</param>
    /// <param name="terminal">Gives the maker's own folder, and how plug-ins are called.</param>
    public JobExtensions JobExtensions(ParseResult parsed, Terminal terminal)
    {
        var given = parsed.GetValue(folder);
        if (given is not null && !Directory.Exists(given))
            throw new UsageException($"--plugins is '{given}', which is not a folder.");
        return new()
        {
            PluginFiles = [.. terminal.PluginFolder is { } own ? PluginSet.Find(own) : [], .. given is null ? []
                : PluginSet.Find(given)],
            PluginCall = Allowed(parsed),
            PluginRun = terminal.PluginRun,
        };
    }

    /// <summary>The extensions of the library and of plug-ins; those left out are reported.</summary>
    public Extensions Extensions(ParseResult parsed, Terminal terminal)
    {
        var wanted = JobExtensions(parsed, terminal);
        var plugins = wanted.Load();
        ReportProblems(plugins, terminal);
        return plugins.AddTo(wanted.Onto);
    }

    /// <summary>Says which plug-ins are left out, and why.</summary>
    public static void ReportProblems(PluginSet plugins, Terminal terminal)
    {
        foreach (var plugin in plugins.Plugins.Where(p => p.Problem is not null))
            terminal.WriteMessage(
                $"Plug-in {plugin.Name} ({plugin.Path}){(plugin.Parts.IsEmpty ? " is left out" : " is left out in part")}: "
                + $"{plugin.Problem}.");
    }

    private TimeSpan? Allowed(ParseResult parsed)
    {
        if (parsed.GetValue(seconds) is not { } given) return null;
        PluginSettings.Seconds.Require(given);
        return TimeSpan.FromSeconds(given);
    }
}
