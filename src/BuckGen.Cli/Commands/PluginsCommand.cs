using System.CommandLine;
using BuckGen.Cli.Printing;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen plugins [JOB]: what is loaded and from where.</summary>
internal static class PluginsCommand
{
    public static Command Create(Terminal terminal)
    {
        var plugins = new PluginOptions();
        var job = new Argument<string?>("JOB") { Description = "A job file; the plug-ins it names are listed too.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("plugins",
            """
            List the plug-ins that are loaded, what they bring and where they come from.

              buckgen plugins
              buckgen plugins job.toml
              buckgen plugins --plugins ~/my-plug-ins

            A plug-in is a .NET assembly. It is found in your own folder of plug-ins (told below the list), in a
            folder named by --plugins, or named by a job file: plugins = ["my-plugin.dll"]. It runs with all your
            rights: load only what you trust. --isolate-plugins, or isolate-plugins = true in a job file, runs the
            command in a process of its own, so that a plug-in that ends it is left out; below the list stands
            what that promises.
            """) { job };
        plugins.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(job);
            PluginPrinter.Print(terminal.Printer(), plugins.Load(parsed, terminal, path is null ? null : MakeCommand.Plugins(path)), terminal.PluginFolder);
            return ExitStatus.Done;
        });
        return command;
    }
}
