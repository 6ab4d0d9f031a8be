using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Output.Files;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen vents OUTLINE: only where to drill.</summary>
internal static class VentsCommand
{
    public static HelpedCommand Create(Terminal terminal, CancellationToken cancellation)
    {
        var outline = BuckCommand.OutlineArgument();
        var command = new HelpedCommand("vents", CommandGroup.Part, "Say where to drill vents, and write only the drill map.")
        {
            Examples =
            [
                "buckgen vents tray.dxf --depth 36mm --stock 6mm --gauge 0.75mm",
                "buckgen vents tray.dxf --depth 36mm --stock 6mm --drill ngc --out holes",
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
            var job = buck.Job(parsed, path, reading, buck.Extensions(parsed, terminal), withVents: true).WithoutPrediction();
            var plan = BuckRun.Plan(terminal, job, BuckRun.Here, cancellation);
            var folder = parsed.GetValue(run.Out) ?? Path.GetFileNameWithoutExtension(path) + "-vents";
            return BuckRun.Write(
                terminal, plan, OutputFiles.DrillMap(plan, job.Output, null, cancellation), folder, parsed.GetValue(run.Force),
                parsed.GetValue(run.Json), cancellation);
        });
    }
}
