using System.Collections.Immutable;
using System.CommandLine;
using BuckGen.Cli.Commands;
using BuckGen.Cli.Terminals;
using BuckGen.Jobs;
using BuckGen.Plugins;

namespace BuckGen.Cli.Isolation;

/// <summary>
/// Runs a command in a process of its own, because of its plug-ins: when that process ends in the middle, it is run again without
/// the part that ended it.
/// </summary>
internal static class IsolatedRun
{
    /// <summary>True when the command line asks for it, or the job that it names.</summary>
    public static bool IsWanted(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        if (!command.Options.Any(o => o.Name == PluginOptions.Isolate)) return false;
        return parsed.GetValue<bool>(PluginOptions.Isolate)
            || (command.Arguments is [var first, ..] && parsed.GetResult(first) is { Tokens: [var path] }
                && IsWanted(path.Value));
    }

    /// <summary>Runs it, as often as it takes to find all parts that end it.</summary>
    public static int Run(string[] args, Terminal terminal, CancellationToken cancellation)
    {
        var leftOut = ImmutableArray<LeftOutPart>.Empty;
        while (true)
        {
            var end = terminal
                .RunWithStatus("Working in a process for the plug-ins", () => WorkerProcess.Run(args, leftOut, cancellation));
            if (end.Status is { } status)
            {
                terminal.Relay(end.Out, end.Error);
                return status;
            }

            // A part that is left out is not called; so the same one twice means that it is not the one.
            if (end.FailedPart is not { } culprit
                || leftOut.Any(l => l.File == culprit.File && (l.Part.Length == 0 || l.Part == culprit.Part)))
            {
                terminal.WriteMessage(
                    $"buckgen: the process for the plug-ins ended, and no call of a plug-in was to blame ({end.Reason}); "
                    + "the last complete result is whole. Leave the plug-ins out one by one.");
                return ExitStatus.BadInput;
            }

            leftOut = leftOut.Add(culprit);
        }
    }

    /// <summary>True for a job file that asks for it. The command itself reports what is wrong with the file.</summary>
    private static bool IsWanted(string path)
    {
        try
        {
            return File.Exists(path) && (Path.GetExtension(path).Equals(".toml", StringComparison.OrdinalIgnoreCase))
                && MakeCommand.Plugins(path).Isolated;
        }
        catch (JobFileException)
        {
            return false;
        }
    }
}
