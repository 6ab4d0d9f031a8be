using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Jobs;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen buck OUTLINE: a buck from an outline and options.</summary>
internal static class BuckCommand
{
    public static HelpedCommand Create(Terminal terminal, CancellationToken cancellation)
    {
        var outline = OutlineArgument();
        var command = new HelpedCommand("buck", CommandGroup.Make, "Make a buck from a drawing, without a job file.")
        {
            Examples =
            [
                "buckgen buck sign.svg --depth 18mm --stock 6mm",
                "buckgen buck tray.dxf --depth 1-1/2in --stock 1/2in 1/4in --kind female",
                "buckgen buck box.svg --depth 36mm --draft 3deg --stock mdf-12 --out box",
            ],
        };
        command.Add(outline);
        return command.WhenNamed(() => Complete(command, outline, terminal, cancellation));
    }

    private static void Complete(
        HelpedCommand command, Argument<string> outline, Terminal terminal, CancellationToken cancellation)
    {
        var (reading, buck, run) = (new ReadingOptions(), new BuckOptions(), new RunOptions());
        buck.AddTo(command);
        reading.AddTo(command);
        run.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(outline)!;
            var job = buck.Job(parsed, path, reading, buck.Extensions(parsed, terminal));
            var folder = parsed.GetValue(run.Out) ?? Path.GetFileNameWithoutExtension(path) + "-buck";
            var force = parsed.GetValue(run.Force);
            var made = terminal.RunWithProgress(
                Path.GetFileName(path), progress => JobRunner.Run(job, BuckRun.Here, force, progress, cancellation));
            return BuckRun.Write(terminal, made.Plan, made.Files, folder, force, parsed.GetValue(run.Json), cancellation);
        });
    }

    internal static Argument<string> OutlineArgument() => new("OUTLINE") { Description = "The drawing: SVG or DXF." };
}
