using System.CommandLine;
using BuckGen.Jobs;
using BuckGen.Output;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen make JOB: everything a job file says.</summary>
internal static class MakeCommand
{
    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var job = JobArgument();
        var run = new RunOptions();
        var command = new Command("make",
            "Do everything a job file says.\n\n  buckgen make job.toml\n  buckgen make job.toml --out ~/cuts/sign") { job };
        run.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(job)!;
            var read = ReadJob(path);
            var outline = BuckRun.Read(OutlinePath(path, read), read.Reading);
            var plan = BuckRun.Plan(terminal, outline, read.Buck, read.Cutting, cancellation);
            var folder = parsed.GetValue(run.Out) ?? Path.Combine(Path.GetDirectoryName(path) ?? "", "out");
            var force = parsed.GetValue(run.Force);
            return BuckRun.Write(
                terminal, plan, OutputFiles.Of(plan, read.Output, force), read.Output, folder, force, parsed.GetValue(run.Json));
        });
        return command;
    }

    internal static Argument<string> JobArgument() => new("JOB") { Description = "The job file (TOML); 'buckgen new' writes one." };

    internal static Job ReadJob(string path)
    {
        if (Directory.Exists(path)) throw new UsageException($"{path} is a folder; name the job file itself.");
        if (!File.Exists(path)) throw new UsageException($"{path} does not exist; 'buckgen new {path}' writes a job file to start from.");
        var (text, name) = (File.ReadAllText(path), Path.GetFileName(path));
        var catalog = JobFile.CatalogName(text, name) is { } file ? CatalogFiles.Read(Beside(path, file)) : null;
        var job = JobFile.Read(text, name, catalog);
        return job.PanelDrawing is { } drawing ? job.WithPanel(BuckRun.Read(Beside(path, drawing.File), drawing.Reading)) : job;
    }

    /// <summary>The outline's path is written relative to the job file.</summary>
    internal static string OutlinePath(string jobPath, Job job) => Beside(jobPath, job.OutlineFile);

    private static string Beside(string jobPath, string file) => Path.Combine(Path.GetDirectoryName(Path.GetFullPath(jobPath))!, file);
}
