using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Jobs;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen make JOB: everything a job file says.</summary>
internal static class MakeCommand
{
    public static HelpedCommand Create(Terminal terminal, CancellationToken cancellation)
    {
        var argument = JobArgument();
        var command = new HelpedCommand("make", CommandGroup.Make, "Do everything a job file says.")
        {
            Examples = ["buckgen make job.toml", "buckgen make job.toml --out ~/cuts/sign"],
        };
        command.Add(argument);
        return command.WhenNamed(() => Complete(command, argument, terminal, cancellation));
    }

    private static void Complete(
        HelpedCommand command, Argument<string> argument, Terminal terminal, CancellationToken cancellation)
    {
        var (run, plugins) = (new RunOptions(), new PluginOptions());
        run.AddTo(command);
        plugins.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(argument)!;
            var job = ReadJob(path, plugins, parsed, terminal, cancellation);
            var folder = parsed.GetValue(run.Out) ?? Path.Combine(Path.GetDirectoryName(path) ?? "", "out");
            var force = parsed.GetValue(run.Force);
            var made = terminal.RunWithProgress(
                Path.GetFileName(path), progress => JobRunner.Run(job, Beside(path), force, progress, cancellation));
            return BuckRun.Write(terminal, made, folder, force, parsed.GetValue(run.Json), cancellation);
        });
    }

    internal static Argument<string> JobArgument() =>
        new("JOB") { Description = "The job file (TOML); 'buckgen new' writes one." };

    /// <summary>The plug-ins that a job names, beside it, and how they are run.</summary>
    internal static JobPlugins Plugins(string path)
    {
        var named = JobFile.Plugins(TextOf(path), Path.GetFileName(path));
        return named with { Files = [.. named.Files.Select(Beside(path).PathOf)] };
    }

    /// <summary>Reads a job with all that it names; plug-ins that are left out are reported.</summary>
    internal static Job ReadJob(string path, PluginOptions plugins, ParseResult parsed, Terminal terminal,
        CancellationToken cancellation)
    {
        var (text, name) = (TextOf(path), Path.GetFileName(path));
        return JobRunner.Load(text, name, Beside(path), plugins.JobExtensions(parsed, terminal),
            set => PluginOptions.ReportProblems(set, terminal), cancellation);
    }

    /// <summary>The files beside a job.</summary>
    internal static JobFolder Beside(string path) => new(Path.GetDirectoryName(Path.GetFullPath(path))!);

    private static string TextOf(string path)
    {
        if (Directory.Exists(path)) throw new UsageException($"{path} is a folder; name the job file itself.");
        if (!File.Exists(path))
            throw new UsageException($"{path} does not exist; 'buckgen new {path}' writes a job file to start from.");
        return File.ReadAllText(path);
    }
}
