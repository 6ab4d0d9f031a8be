using System.CommandLine;
using BuckGen.Output;
using BuckGen.Sheets;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen jig OUTLINE: only what trims the part.</summary>
internal static class JigCommand
{
    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var outline = BuckCommand.OutlineArgument();
        var (reading, buck, finish, run) = (new ReadingOptions(), new BuckOptions(), new FinishOptions(), new RunOptions());
        var command = new Command("jig",
            """
            Make the ring by which a part is trimmed straight, and the core that holds it, from the drawing of its buck;
            on request also a template for its flange and the panel it shows through.

              buckgen jig tray.dxf --depth 36mm --stock 6mm --gauge 1mm
              buckgen jig tray.dxf --depth 36mm --stock 6mm 3mm --gauge 0.75mm --trim-height 15mm --out ring
              buckgen jig tray.dxf --depth 36mm --stock 6mm --gauge 1mm --flange 15mm --bit 6mm --panel
            """) { outline };
        buck.AddTo(command);
        finish.AddTo(command);
        reading.AddTo(command);
        run.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(outline)!;
            var extensions = buck.Extensions(parsed, terminal);
            var how = reading.Of(parsed, extensions);
            var spec = finish.Of(parsed, buck.Buck(parsed, how, extensions, withSheet: true));
            spec.Validate();
            var plan = BuckRun.Plan(terminal, BuckRun.Read(path, how, cancellation), spec, buck.Cutting(parsed), extensions.Design, cancellation, CutScope.Accessories);
            var folder = parsed.GetValue(run.Out) ?? Path.GetFileNameWithoutExtension(path) + "-jig";
            var (output, force) = (buck.Output(parsed, extensions), parsed.GetValue(run.Force));
            return BuckRun.Write(terminal, plan, OutputFiles.Jigs(plan, output, force, null, cancellation), folder, force, parsed.GetValue(run.Json), cancellation);
        });
        return command;
    }
}
