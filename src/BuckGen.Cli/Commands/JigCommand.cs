using System.CommandLine;
using BuckGen.Bucks;
using BuckGen.Output;
using BuckGen.Sheets;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen jig OUTLINE: only what trims the part.</summary>
internal static class JigCommand
{
    private static readonly JigSpec Defaults = new();

    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var outline = BuckCommand.OutlineArgument();
        var (reading, buck, run) = (new ReadingOptions(), new BuckOptions(), new RunOptions());
        var trimHeight = QuantityOption.Length("--trim-height", "Height of the cut over the flange.", Defaults.TrimHeight);
        var clearance = QuantityOption.Length("--clearance", "Between part and ring.", Defaults.Clearance);
        var land = QuantityOption.Length("--land", "Width of the ring.", Defaults.Land);
        var command = new Command("jig",
            """
            Make the ring by which a part is trimmed straight, and the core that holds it, from the drawing of its buck.

              buckgen jig tray.dxf --depth 36mm --stock 6mm --gauge 1mm
              buckgen jig tray.dxf --depth 36mm --stock 6mm 3mm --gauge 0.75mm --trim-height 15mm --out ring
            """) { outline };
        buck.AddTo(command);
        foreach (var option in (Option[])[trimHeight, clearance, land]) command.Add(option);
        reading.AddTo(command);
        run.AddTo(command);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(outline)!;
            var how = reading.Of(parsed);
            var spec = buck.Buck(parsed, how, withSheet: true) with
            {
                Jig = Defaults with
                {
                    TrimHeight = parsed.GetValue(trimHeight) ?? Defaults.TrimHeight,
                    Clearance = parsed.GetValue(clearance) ?? Defaults.Clearance,
                    Land = parsed.GetValue(land) ?? Defaults.Land,
                },
            };
            spec.Validate();
            var plan = BuckRun.Plan(terminal, BuckRun.Read(path, how), spec, buck.Cutting(parsed), cancellation, CutScope.Accessories);
            var folder = parsed.GetValue(run.Out) ?? Path.GetFileNameWithoutExtension(path) + "-jig";
            var (output, force) = (buck.Output(parsed), parsed.GetValue(run.Force));
            return BuckRun.Write(terminal, plan, OutputFiles.Jigs(plan, output, force), output, folder, force, parsed.GetValue(run.Json));
        });
        return command;
    }
}
