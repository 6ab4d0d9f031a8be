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

    private readonly Option<string?> folder = new("--plugins") { Description = "Also load the plug-ins in this folder; 'buckgen plugins' lists them.", HelpName = "DIR" };

    private readonly Option<bool> isolate = new(Isolate) { Description = "Run plug-ins in a process of their own; 'buckgen plugins' explains why." };

    private readonly Option<double?> seconds = QuantityOption.Number("--plugin-seconds", "Longest a plug-in may take for one call.", PluginRun.Default.Call.TotalSeconds, "seconds");

    /// <summary>All of them; they also apply to a job file.</summary>
    public Option[] All => [folder, isolate, seconds];

    public void AddTo(HelpedCommand command) => command.Add(OptionGroup.PlugIns, All);

    /// <summary>All plug-ins, those left out included.</summary>
    /// <param name="parsed">The arguments.</param>
    /// <param name="terminal">Gives the maker's own folder, and how plug-ins are called.</param>
    /// <param name="named">The plug-ins that a job names, with full paths.</param>
    public PluginSet Load(ParseResult parsed, Terminal terminal, JobPlugins? named)
    {
        var given = parsed.GetValue(folder);
        if (given is not null && !Directory.Exists(given)) throw new UsageException($"--plugins is '{given}', which is no folder.");
        var run = terminal.PluginRun;
        var call = Allowed(parsed) ?? named?.Call ?? run.Call;
        return PluginSet.Load([
            .. terminal.PluginFolder is { } own ? PluginSet.Find(own) : [],
            .. given is null ? [] : PluginSet.Find(given),
            .. named?.Files ?? [],
        ], run with { Call = call, Start = call > run.Start && call != run.Call ? call : run.Start });
    }

    /// <summary>The extensions of the library and of plug-ins; those left out are reported.</summary>
    public Extensions Extensions(ParseResult parsed, Terminal terminal, JobPlugins? named = null)
    {
        var plugins = Load(parsed, terminal, named);
        foreach (var plugin in plugins.Plugins.Where(p => p.Problem is not null))
            terminal.WriteMessage($"Plug-in {plugin.Name} ({plugin.Path}){(plugin.Parts.IsEmpty ? " is left out" : " is left out in part")}: {plugin.Problem}.");
        return plugins.AddTo(BuckGen.Plugins.Extensions.BuiltIn);
    }

    private TimeSpan? Allowed(ParseResult parsed) => parsed.GetValue(seconds) switch
    {
        null => null,
        >= 1 and <= 3600 and var given => TimeSpan.FromSeconds(given),
        var other => throw new UsageException(FormattableString.Invariant($"--plugin-seconds is {other}; it must be from 1 to 3600.")),
    };
}
