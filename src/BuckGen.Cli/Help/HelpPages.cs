using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using BuckGen.Cli.Terminals;

namespace BuckGen.Cli.Help;

/// <summary>The pages of the help: a first one with all commands, and one for each command.</summary>
/// <param name="firstPage">The text above and below the list of commands.</param>
internal sealed class HelpPages(FirstPage firstPage) : SynchronousCommandLineAction
{
    private const int OptionColumn = 29;

    /// <summary>Makes a program print these pages for --help.</summary>
    public static void AddTo(RootCommand root, FirstPage firstPage) =>
        root.Options.OfType<HelpOption>().Single().Action = new HelpPages(firstPage);

    public override bool Terminating => true;

    // Help is printed whatever else is wrong with the line.
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        var text = parseResult.CommandResult.Command is HelpedCommand command ? PageOf(command)
            : First(parseResult.RootCommandResult.Command);
        parseResult.InvocationConfiguration.Output.Write(text);
        return ExitStatus.Done;
    }

    private string First(Command root)
    {
        var text = new HelpText();
        text.Paragraph(firstPage.Summary);
        text.Blank();
        var commands = root.Subcommands.OfType<HelpedCommand>().ToList();
        var column = 0;
        foreach (var command in commands) column = Math.Max(column, NameOf(command).Length + 4);
        foreach (var group in Enum.GetValues<CommandGroup>())
        {
            text.Line(HeadingOf(group));
            foreach (var command in commands.Where(c => c.Group == group))
                text.Term(NameOf(command), command.Description ?? "", column);
        }

        text.Blank();
        foreach (var line in firstPage.Last) text.Line(line);
        return text.ToString();
    }

    private static string PageOf(HelpedCommand command)
    {
        var text = new HelpText();
        text.Paragraph(command.Description ?? "");
        text.Blank();
        foreach (var example in command.Examples) text.Line($"  {example}");
        if (command.Notes.Length > 0) text.Blank();
        foreach (var line in command.Notes.Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.StartsWith(' ')) text.Line(line);
            else text.Paragraph(line);
        }

        text.Blank();
        text.Line($"Usage: buckgen {NameOf(command)}{(command.Options.Any(o => !o.Hidden) ? " [OPTIONS]" : "")}");
        foreach (var argument in command.Arguments) text.Term(argument.Name, argument.Description ?? "", OptionColumn);
        foreach (var (about, options) in command.Grouped())
        {
            text.Blank();
            text.Line(HeadingOf(about));
            foreach (var option in options) text.Term(TermOf(option), option.Description ?? "", OptionColumn);
        }

        return text.ToString();
    }

    private static string NameOf(Command command) =>
        string.Join(' ',
            [command.Name,
                .. command.Arguments.Select(a => a.Arity.MinimumNumberOfValues == 0
                    || a.HasDefaultValue ? $"[{a.Name}]" : a.Name)]);

    private static string TermOf(Option option) =>
        string.Join(", ", [option.Name, .. option.Aliases]) + (option.HelpName is { } name ? $" {name}" : "");

    private static string HeadingOf(CommandGroup group) => group switch
    {
        CommandGroup.Make => "Make a buck",
        CommandGroup.Look => "Look before you cut",
        CommandGroup.Part => "Only a part of the job",
        _ => "Set up",
    };

    private static string HeadingOf(OptionGroup group) => group switch
    {
        OptionGroup.PlugIns => "Plug-ins",
        OptionGroup.FinishedPart => "Finished part",
        _ => group.ToString(),
    };
}
