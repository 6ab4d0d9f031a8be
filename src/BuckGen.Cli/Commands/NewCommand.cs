using System.CommandLine;
using System.Text;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Intake.Reading;
using BuckGen.Jobs;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen new JOB: a commented job file to start from, short or with every setting.</summary>
internal static class NewCommand
{
    public static HelpedCommand Create(Terminal terminal)
    {
        var job = new Argument<string>("JOB") { Description = "The job file to write.", DefaultValueFactory = _ => "job.toml" };
        var command = new HelpedCommand("new", CommandGroup.Make, "Write a job file to start from.")
        {
            Examples = ["buckgen new job.toml --outline sign.svg", "buckgen new box.toml --for box --outline sign.svg"],
        };
        command.Add(job);
        return command.WhenNamed(() => Complete(command, job, terminal));
    }

    private static void Complete(HelpedCommand command, Argument<string> job, Terminal terminal)
    {
        var outline =
            new Option<string>("--outline")
            {
                Description = "The drawing to name in it.",
                DefaultValueFactory = _ => "outline.svg",
                HelpName = "FILE"
            };
        var work = QuantityOption.Choice("--for", "A short job for this work:", JobWork.Sign);
        var all = new Option<bool>("--all") { Description = "Every setting there is, explained, instead of a short job." };
        command.Add(OptionGroup.Drawing, outline);
        command.Add(OptionGroup.Output, work, all);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(job)!;
            if (string.IsNullOrWhiteSpace(path))
                throw new UsageException("The job file's name is empty; name the file to write.");
            if (Directory.Exists(path)) throw new UsageException($"{path} is a folder; name the file to write.");
            if (File.Exists(path)) throw new UsageException($"{path} exists already; choose another name or remove it first.");
            var drawing = parsed.GetValue(outline)!;
            if (parsed.GetResult(outline) is { Implicit: false }) RequireDrawing(drawing, Path.GetDirectoryName(path) ?? "");
            if (parsed.GetValue(all) && parsed.GetValue(work) is not null)
                throw new UsageException("--for writes a short job and --all one with every setting; leave one of them out.");
            var text = parsed.GetValue(all) ? JobTemplate.Text(drawing)
                : JobTemplate.ForWork(parsed.GetValue(work) ?? JobWork.Sign, drawing);
            AtomicFile.Write(path, Encoding.UTF8.GetBytes(text), replace: false);
            terminal.WriteResult($"Wrote {path}. Set the depth and your stock in it, then run: buckgen make {path}");
            return ExitStatus.Done;
        });
    }

    /// <summary>Refuses a drawing that is not there or that no reader knows; what it holds is read with the job.</summary>
    private static void RequireDrawing(string drawing, string folder)
    {
        using var file = new JobFolder(folder).Open(drawing, "drawing");
        using var content = new MemoryStream();
        file.CopyTo(content);
        var bytes = content.ToArray();
        // The reading says what is wrong with it.
        if (!OutlineFormats.All.Any(f => f.Recognises(bytes))) OutlineReader.Read(bytes, Path.GetFileName(drawing));
    }
}
