using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Cutting.Boards;
using BuckGen.Output.Files;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen jig OUTLINE: only what trims the part.</summary>
internal static class JigCommand
{
    public static HelpedCommand Create(Terminal terminal, CancellationToken cancellation)
    {
        var outline = BuckCommand.OutlineArgument();
        var command = new HelpedCommand("jig", CommandGroup.Part, "Make the ring and the core that trim a part straight.")
        {
            Examples =
            [
                "buckgen jig tray.dxf --depth 36mm --stock 6mm --gauge 1mm",
                "buckgen jig tray.dxf --depth 36mm --stock 6mm 3mm --out ring",
                "buckgen jig tray.dxf --depth 36mm --stock 6mm --flange 15mm --bit 6mm --panel",
            ],
            Notes = "On request it also makes a template for the flange and the panel that the part shows through.",
        };
        command.Add(outline);
        return command.WhenNamed(() => Complete(command, outline, terminal, cancellation));
    }

    private static void Complete(
        HelpedCommand command, Argument<string> outline, Terminal terminal, CancellationToken cancellation)
    {
        var (reading, buck, finish, run) = (new ReadingOptions(), new BuckOptions(), new FinishOptions(), new RunOptions());
        buck.AddTo(command);
        finish.AddTo(command);
        reading.AddTo(command);
        run.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(outline)!;
            var drawn = buck.Job(parsed, path, reading, buck.Extensions(parsed, terminal), withSheet: true).WithoutPrediction();
            var job = drawn with { Buck = finish.Apply(parsed, drawn.Buck) };
            var plan = BuckRun.Plan(terminal, job, BuckRun.Here, cancellation, CutScope.Accessories);
            var folder = parsed.GetValue(run.Out) ?? Path.GetFileNameWithoutExtension(path) + "-jig";
            var force = parsed.GetValue(run.Force);
            return BuckRun.Write(terminal, plan, OutputFiles.Jigs(plan, job.Output, force, null, cancellation), folder, force,
                parsed.GetValue(run.Json), cancellation);
        });
    }
}
