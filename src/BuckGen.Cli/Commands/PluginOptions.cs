using System.CommandLine;
using BuckGen.Plugins;

namespace BuckGen.Cli.Commands;

/// <summary>Where plug-ins come from: the maker's own folder, a folder named on the command line, files that a job names. Never the current folder unasked.</summary>
internal sealed class PluginOptions
{
    public Option<string?> Folder { get; } = new("--plugins") { Description = "Also load the plug-ins in this folder; 'buckgen plugins' lists them.", HelpName = "DIR" };

    public void AddTo(Command command) => command.Add(Folder);

    /// <summary>All plug-ins, those left out included.</summary>
    /// <param name="parsed">The arguments.</param>
    /// <param name="terminal">Knows the maker's own folder.</param>
    /// <param name="named">Files that a job names.</param>
    public PluginSet Load(ParseResult parsed, Terminal terminal, IEnumerable<string> named)
    {
        var given = parsed.GetValue(Folder);
        if (given is not null && !Directory.Exists(given)) throw new UsageException($"--plugins is '{given}', which is no folder.");
        return PluginSet.Load([
            .. terminal.PluginFolder is { } own ? PluginSet.Find(own) : [],
            .. given is null ? [] : PluginSet.Find(given),
            .. named,
        ]);
    }

    /// <summary>What comes with the library and what plug-ins bring; those left out are told of.</summary>
    public Extensions Extensions(ParseResult parsed, Terminal terminal, IEnumerable<string>? named = null)
    {
        var plugins = Load(parsed, terminal, named ?? []);
        foreach (var plugin in plugins.Plugins.Where(p => p.Problem is not null))
            terminal.Say($"Plug-in {plugin.Name} ({plugin.Path}){(plugin.Parts.IsEmpty ? " is left out" : " is left out in part")}: {plugin.Problem}.");
        return plugins.AddTo(BuckGen.Plugins.Extensions.Own);
    }
}
