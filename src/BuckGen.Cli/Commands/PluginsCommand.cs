using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Printing;
using BuckGen.Cli.Terminals;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen plugins [JOB]: what is loaded and from where.</summary>
internal static class PluginsCommand
{
    public static HelpedCommand Create(Terminal terminal)
    {
        var job = new Argument<string?>("JOB")
        {
            Description = "A job file; the plug-ins it names are listed too.",
            Arity = ArgumentArity.ZeroOrOne
        };
        var command =
            new HelpedCommand("plugins", CommandGroup.Setup, "List plug-ins, what they provide and where they come from.")
            {
                Examples = ["buckgen plugins", "buckgen plugins job.toml", "buckgen plugins --plugins ~/my-plug-ins"],
                Notes =
                """
                A plug-in is a .NET assembly. BuckGen looks for plug-ins in your own folder (its path is printed below the list), in the folder that --plugins names, and where a job file says plugins = ["my-plugin.dll"]. A plug-in runs with all your rights: load only what you trust.
                With --isolate-plugins, or isolate-plugins = true in a job file, the command runs in a process of its own. A plug-in that ends that process is left out. The promises of both ways are printed below the list.
                """,
            };
        command.Add(job);
        return command.WhenNamed(() => Complete(command, job, terminal));
    }

    private static void Complete(HelpedCommand command, Argument<string?> job, Terminal terminal)
    {
        var plugins = new PluginOptions();
        plugins.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(job);
            PluginPrinter.Print(terminal.Printer(), plugins.JobExtensions(parsed, terminal)
                .Load(path is null ? null : MakeCommand.Plugins(path)), terminal.PluginFolder);
            return ExitStatus.Done;
        });
    }
}
