using System.Collections.Immutable;
using System.CommandLine;

namespace BuckGen.Cli.Help;

/// <summary>A command that says in which group it belongs and explains itself by examples; its options have groups too.</summary>
/// <param name="name">Its name.</param>
/// <param name="group">The purpose of the command.</param>
/// <param name="summary">What it does, in one line.</param>
internal sealed class HelpedCommand(string name, CommandGroup group, string summary) : Command(name, summary)
{
    private readonly Dictionary<Option, OptionGroup> groups = [];
    private Action? complete;

    public CommandGroup Group => group;

    /// <summary>Command lines that run.</summary>
    public ImmutableArray<string> Examples { get; init; } = [];

    /// <summary>What a maker must know beside the options; lines that start with a space are printed as they are.</summary>
    public string Notes { get; init; } = "";

    /// <summary>Leaves the options and the action for later: most runs name one command, and the help names none.</summary>
    /// <param name="add">Adds them.</param>
    public HelpedCommand WhenNamed(Action add)
    {
        complete = add;
        return this;
    }

    /// <summary>Adds what was left for later; before the command is parsed.</summary>
    public void Complete()
    {
        complete?.Invoke();
        complete = null;
    }

    /// <summary>Adds options to a group.</summary>
    public void Add(OptionGroup about, params ReadOnlySpan<Option> options)
    {
        foreach (var option in options)
        {
            Add(option);
            groups.Add(option, about);
        }
    }

    /// <summary>The options of the command by their groups; those without one are left to the end of the page.</summary>
    public IEnumerable<(OptionGroup About, IEnumerable<Option> Options)> Grouped() =>
        Enum.GetValues<OptionGroup>()
            .Select(g => (g, Options.Where(o => !o.Hidden && groups.TryGetValue(o, out var own) && own == g)))
            .Where(g => g.Item2.Any());
}
