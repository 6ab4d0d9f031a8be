using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Jobs;
using BuckGen.Output.Files;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen make JOB: everything a job file says.</summary>
internal static class MakeCommand
{
    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var job = JobArgument();
        var (run, plugins) = (new RunOptions(), new PluginOptions());
        var command = new HelpedCommand("make", CommandGroup.Make, "Do everything a job file says.")
        {
            Examples = ["buckgen make job.toml", "buckgen make job.toml --out ~/cuts/sign"],
        };
        command.Add(job);
        run.AddTo(command);
        plugins.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(job)!;
            var read = ReadJob(path, plugins, parsed, terminal, cancellation);
            var outline = BuckRun.Read(OutlinePath(path, read), read.Reading, cancellation);
            var plan = BuckRun.Plan(terminal, outline, read.Buck, read.Cutting, read.Design, cancellation, forming: read.PredictWall ? read.Forming : null);
            var folder = parsed.GetValue(run.Out) ?? Path.Combine(Path.GetDirectoryName(path) ?? "", "out");
            var force = parsed.GetValue(run.Force);
            return BuckRun.Write(
                terminal, plan, OutputFiles.Create(plan, read.Output, force, null, cancellation), folder, force, parsed.GetValue(run.Json), cancellation);
        });
        return command;
    }

    internal static Argument<string> JobArgument() => new("JOB") { Description = "The job file (TOML); 'buckgen new' writes one." };

    /// <summary>The plug-ins that a job names, beside it, and how they are run.</summary>
    internal static JobPlugins Plugins(string path)
    {
        var named = JobFile.Plugins(TextOf(path), Path.GetFileName(path));
        return named with { Files = [.. named.Files.Select(f => Beside(path, f))] };
    }

    /// <summary>Reads a job with the plug-ins and the catalog it names.</summary>
    internal static Job ReadJob(string path, PluginOptions plugins, ParseResult parsed, Terminal terminal, CancellationToken cancellation)
    {
        var (text, name) = (TextOf(path), Path.GetFileName(path));
        var extensions = plugins.Extensions(parsed, terminal, Plugins(path));
        var catalog = CatalogFiles.Read(JobFile.CatalogName(text, name) is { } file ? Beside(path, file) : null, extensions.Catalog);
        var job = JobFile.Read(text, name, catalog, extensions);
        return job.PanelDrawing is { } drawing ? job.WithPanel(BuckRun.Read(Beside(path, drawing.File), drawing.Reading, cancellation)) : job;
    }

    private static string TextOf(string path)
    {
        if (Directory.Exists(path)) throw new UsageException($"{path} is a folder; name the job file itself.");
        if (!File.Exists(path)) throw new UsageException($"{path} does not exist; 'buckgen new {path}' writes a job file to start from.");
        return File.ReadAllText(path);
    }

    /// <summary>The outline's path is written relative to the job file.</summary>
    internal static string OutlinePath(string jobPath, Job job) => Beside(jobPath, job.OutlineFile);

    private static string Beside(string jobPath, string file) => Path.Combine(Path.GetDirectoryName(Path.GetFullPath(jobPath))!, file);
}
