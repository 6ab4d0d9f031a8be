using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Printing;
using BuckGen.Cli.Terminals;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen blank OUTLINE: what sheet to order; nothing is written.</summary>
internal static class BlankCommand
{
    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var outline = BuckCommand.OutlineArgument();
        var (reading, buck, json) = (new ReadingOptions(), new BuckOptions(), RunOptions.JsonOption());
        var command = new HelpedCommand("blank", CommandGroup.Part, "Say which sheet to order and how thin it will be on average.")
        {
            Examples =
            [
                "buckgen blank tray.dxf --depth 36mm --stock 6mm --gauge 1mm",
                "buckgen blank tray.dxf --depth 36mm --stock 6mm --sheet-size 1220x610mm",
            ],
        };
        command.Add(outline);
        buck.AddTo(command);
        reading.AddTo(command);
        command.Add(OptionGroup.Output, json);
        command.SetAction(parsed =>
        {
            var extensions = buck.Extensions(parsed, terminal);
            var how = reading.Read(parsed, extensions);
            var spec = buck.Buck(parsed, how, extensions, withSheet: true);
            spec.Validate();
            var plan = BuckRun.Plan(terminal, BuckRun.Read(parsed.GetValue(outline)!, how, cancellation), spec, buck.Cutting(parsed), extensions.Design, cancellation);
            var summary = Summary.Create(plan, "", []);
            if (parsed.GetValue(json)) terminal.WriteJson(SummaryJson.Write(summary));
            else
            {
                BlankPrinter.Print(terminal.Printer(), summary);
                FindingsPrinter.Print(terminal.Printer(), summary.Findings);
            }

            return plan.HasErrors ? ExitStatus.DesignHasErrors : ExitStatus.Done;
        });
        return command;
    }
}
