using System.Collections.Immutable;
using BuckGen.Cli.Printing;
using BuckGen.Cli.Terminals;
using BuckGen.Cutting.Boards;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Jobs;
using BuckGen.Output.Files;
using BuckGen.Output.Folders;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Commands;

/// <summary>What the commands share: read a drawing, run a job with its progress shown, write files, say what was made.</summary>
internal static class BuckRun
{
    /// <summary>The files named on the command line, found from the current folder.</summary>
    public static JobFolder Here { get; } = new("");

    /// <summary>Reads an outline file.</summary>
    public static Outline Read(string path, OutlineOptions reading, CancellationToken cancellation)
    {
        using var content = Here.Open(path, "drawing");
        return OutlineReader.Read(content, Path.GetFileName(path), reading, cancellation);
    }

    /// <summary>Designs a job and lays it out, with its steps shown.</summary>
    public static CutPlan Plan(
        Terminal terminal, Job job, IJobFiles files, CancellationToken cancellation, CutScope scope = CutScope.Everything) =>
        terminal.RunWithProgress(
            Path.GetFileName(job.OutlineFile), progress => JobRunner.Plan(job, files, scope, progress, cancellation));

    /// <summary>Writes the files and prints what was made.</summary>
    public static int Write(
        Terminal terminal, CutPlan plan, ImmutableArray<OutputFile> files, string folder, bool force, bool json,
        CancellationToken cancellation) => Write(terminal, new(plan, files), folder, force, json, cancellation);

    /// <summary>Writes the files of a job and prints what was made.</summary>
    public static int Write(
        Terminal terminal, JobResult result, string folder, bool force, bool json, CancellationToken cancellation)
    {
        var files = result.Files;
        if (string.IsNullOrWhiteSpace(folder)) throw new UsageException("--out is empty; name the folder to write.");
        var (removed, remarks) = OutputFolder.Write(folder, files, force, cancellation);
        if (removed.Length > 0)
            terminal.WriteMessage(
                $"Removed {removed.Length} file{(removed.Length == 1 ? "" : "s")} of an earlier run that this one did not "
                + $"make: {string.Join(", ", removed)}");
        foreach (var remark in remarks) terminal.WriteMessage(remark);
        PrintResult(terminal, files, folder, json);
        return result.HasErrors && !force ? ExitStatus.DesignHasErrors : ExitStatus.Done;
    }

    /// <summary>Prints what was made. The files exist already; if printing fails, one line still names their folder.</summary>
    private static void PrintResult(Terminal terminal, ImmutableArray<OutputFile> files, string folder, bool json)
    {
        try
        {
            var summary = files.Single(f => f.Path == OutputFiles.SummaryPath).Content;
            if (json) terminal.WriteJson(summary);
            else
            {
                PlanPrinter.Print(terminal.Printer(), SummaryJson.Read(summary), folder);
                if (files.FirstOrDefault(f => f.Path == $"{JobResult.LidFolder}/{OutputFiles.SummaryPath}") is { } lid)
                {
                    terminal.Printer().Line();
                    PlanPrinter.Print(
                        terminal.Printer(), SummaryJson.Read(lid.Content), Path.Combine(folder, JobResult.LidFolder));
                }
            }
        }
        catch (Exception failure)
        {
            terminal.WriteMessage(
                $"buckgen: wrote {files.Length} files to {folder}. "
                + $"{(failure is PrintException ? failure.Message : "Only printing them failed.")}");
            if (failure is not PrintException) throw;
        }
    }
}
