using System.CommandLine;
using BuckGen.Cli.Commands;
using BuckGen.Cli.Help;
using BuckGen.Cli.Isolation;
using BuckGen.Cli.Terminals;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.Drilling;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Jobs;
using BuckGen.Settings;

namespace BuckGen.Cli;

/// <summary>Parses the arguments, runs a command, and turns every failure into one clear line.</summary>
internal static class CommandLine
{
    /// <summary>Runs the program.</summary>
    /// <param name="args">The arguments.</param>
    /// <param name="terminal">Where it talks.</param>
    /// <param name="cancellation">Stops it.</param>
    public static int Run(string[] args, Terminal terminal, CancellationToken cancellation = default)
    {
        terminal = terminal with { PluginRun = terminal.PluginRun with { Cancellation = cancellation } };
        var parsed = Root(args, terminal, cancellation).Parse(args);
        if (parsed.Errors.Count > 0)
        {
            terminal.WriteMessage($"buckgen: {parsed.Errors[0].Message.TrimEnd('.')}. See 'buckgen --help'.");
            return ExitStatus.BadInput;
        }

        try
        {
            if (!terminal.PluginRun.IsWatched && IsolatedRun.IsWanted(parsed))
                return IsolatedRun.Run(args, terminal, cancellation);
            return parsed.Invoke(new() { Output = terminal.Out, Error = terminal.Error, EnableDefaultExceptionHandler = false });
        }
        catch (OperationCanceledException)
        {
            terminal.WriteMessage("buckgen: stopped; the last complete result is untouched.");
            return ExitStatus.BadInput;
        }
        catch (JobFileException wrong) when (wrong.Faults.Length > 0)
        {
            foreach (var fault in wrong.Faults) terminal.WriteMessage($"buckgen: {fault.Message}");
            return ExitStatus.BadInput;
        }
        catch (Exception failure)
            when (failure is OutlineException or SpecException or JobFileException or CatalogException or CutFileException
                                            or UsageException or DrillException or IOException or UnauthorizedAccessException)
        {
            terminal.WriteMessage($"buckgen: {failure.Message}");
            return ExitStatus.BadInput;
        }
        catch (Exception fault)
        {
            terminal.WriteMessage(
                $"buckgen: a fault of the program itself ({fault.GetType().Name}: {fault.Message}); please report it with "
                + "the command and the drawing.");
            return ExitStatus.Fault;
        }
    }

    private static readonly FirstPage FirstPage = new(
        "BuckGen makes wooden forming bucks from drawings.",
        [
            "Start with:  buckgen new job.toml --outline sign.svg",
            "             buckgen make job.toml",
            "A command:   buckgen COMMAND --help explains it.",
            "Lengths take mm, cm, in, ft and fractions (1/2in); a bare number is mm.",
            "Exit status: 0 done, 1 the design has errors, 2 bad input, 3 a program fault.",
        ]);

    private static RootCommand Root(string[] args, Terminal terminal, CancellationToken cancellation)
    {
        HelpedCommand[] commands =
        [
            MakeCommand.Create(terminal, cancellation),
            BuckCommand.Create(terminal, cancellation),
            VentsCommand.Create(terminal, cancellation),
            JigCommand.Create(terminal, cancellation),
            BlankCommand.Create(terminal, cancellation),
            FormCommand.Create(terminal, cancellation),
            CheckCommand.Create(terminal, cancellation),
            InspectCommand.Create(terminal, cancellation),
            NewCommand.Create(terminal),
            CatalogCommand.Create(terminal),
            PluginsCommand.Create(terminal),
            CompletionCommand.Create(terminal),
        ];
        var root = new RootCommand();
        // A shell that completes sends the line as one argument; a file of arguments may name any command.
        string[] words = [.. args.SelectMany(a => a.Split(' '))];
        var any = args.Any(a => a.StartsWith('@'));
        foreach (var command in commands)
        {
            root.Add(command);
            if (any || words.Contains(command.Name)) command.Complete();
        }

        HelpPages.AddTo(root, FirstPage);
        return root;
    }
}
