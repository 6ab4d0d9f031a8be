using System.Collections.Immutable;
using BuckGen.Cli.Printing;
using BuckGen.Cli.Terminals;
using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Output.Files;
using BuckGen.Output.Folders;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Commands;

/// <summary>The run that 'make' and 'buck' share: read, design, lay out, write, report.</summary>
internal static class BuckRun
{
    /// <summary>Reads an outline file.</summary>
    public static Outline Read(string path, OutlineOptions reading, CancellationToken cancellation)
    {
        if (Directory.Exists(path)) throw new UsageException($"{path} is a folder; name the drawing itself.");
        if (!File.Exists(path)) throw new UsageException($"{path} does not exist; check the name of the drawing.");
        using var content = File.OpenRead(path);
        return OutlineReader.Read(content, Path.GetFileName(path), reading, cancellation);
    }

    /// <summary>
    /// Designs, predicts the wall of the formed part where that is wanted and the sheet is known, and lays out.
    /// </summary>
    public static CutPlan Plan(
        Terminal terminal, Outline outline, BuckSpec buck, CuttingSpec cutting, DesignExtensions extensions, CancellationToken cancellation,
        CutScope scope = CutScope.Everything, FormingSpec? forming = null)
    {
        var design = terminal.RunWithStatus($"Designing the buck of {outline.Name}", () => BuckDesign.Create(outline, buck, extensions, null, cancellation));
        if (forming is not null && buck.Sheet is not null) design = terminal.RunWithStatus("Forming the sheet", () => design.WithFormedPart(forming, cancellation));
        return CutPlan.Create(design, cutting, scope, cancellation);
    }

    /// <summary>Writes the files and prints what was made.</summary>
    public static int Write(
        Terminal terminal, CutPlan plan, ImmutableArray<OutputFile> files, string folder, bool force, bool json, CancellationToken cancellation)
    {
        if (string.IsNullOrWhiteSpace(folder)) throw new UsageException("--out is empty; name the folder to write.");
        var (removed, remarks) = OutputFolder.Write(folder, files, force, cancellation);
        if (removed.Length > 0) terminal.WriteMessage($"Removed {removed.Length} file{(removed.Length == 1 ? "" : "s")} of an earlier run that this one did not make: {string.Join(", ", removed)}");
        foreach (var remark in remarks) terminal.WriteMessage(remark);
        PrintResult(terminal, files, folder, json);
        return plan.HasErrors && !force ? ExitStatus.DesignHasErrors : ExitStatus.Done;
    }

    /// <summary>Prints what was made. The files exist already; if printing fails, one line still names their folder.</summary>
    private static void PrintResult(Terminal terminal, ImmutableArray<OutputFile> files, string folder, bool json)
    {
        try
        {
            var summary = files.Single(f => f.Path == OutputFiles.SummaryPath).Content;
            if (json) terminal.WriteJson(summary);
            else PlanPrinter.Print(terminal.Printer(), SummaryJson.Read(summary), folder);
        }
        catch (Exception failure)
        {
            terminal.WriteMessage($"buckgen: wrote {files.Length} files to {folder}. {(failure is PrintException ? failure.Message : "Only printing them went wrong.")}");
            if (failure is not PrintException) throw;
        }
    }
}
