using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Output.Files;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen buck OUTLINE: a buck from an outline and options.</summary>
internal static class BuckCommand
{
    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var outline = OutlineArgument();
        var (reading, buck, run) = (new ReadingOptions(), new BuckOptions(), new RunOptions());
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
        buck.AddTo(command);
        reading.AddTo(command);
        run.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(outline)!;
            var extensions = buck.Extensions(parsed, terminal);
            var how = reading.Read(parsed, extensions);
            var spec = buck.Buck(parsed, how, extensions);
            spec.Validate();
            var plan = BuckRun.Plan(terminal, BuckRun.Read(path, how, cancellation), spec, buck.Cutting(parsed), extensions.Design, cancellation, forming: new());
            var folder = parsed.GetValue(run.Out) ?? Path.GetFileNameWithoutExtension(path) + "-buck";
            var (output, force) = (buck.Output(parsed, extensions), parsed.GetValue(run.Force));
            return BuckRun.Write(terminal, plan, OutputFiles.Create(plan, output, force, null, cancellation), folder, force, parsed.GetValue(run.Json), cancellation);
        });
        return command;
    }

    internal static Argument<string> OutlineArgument() => new("OUTLINE") { Description = "The drawing: SVG or DXF." };
}
