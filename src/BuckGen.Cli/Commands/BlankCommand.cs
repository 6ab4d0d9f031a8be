using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Printing;
using BuckGen.Cli.Terminals;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen blank OUTLINE: what sheet to order; nothing is written.</summary>
internal static class BlankCommand
{
    public static HelpedCommand Create(Terminal terminal, CancellationToken cancellation)
    {
        var outline = BuckCommand.OutlineArgument();
        var command =
            new HelpedCommand("blank", CommandGroup.Part, "Say which sheet to order and how thin it will be on average.")
            {
                Examples =
            [
                "buckgen blank tray.dxf --depth 36mm --stock 6mm --gauge 1mm",
                "buckgen blank tray.dxf --depth 36mm --stock 6mm --sheet-size 1220x610mm",
            ],
            };
        command.Add(outline);
        return command.WhenNamed(() => Complete(command, outline, terminal, cancellation));
    }

    private static void Complete(
        HelpedCommand command, Argument<string> outline, Terminal terminal, CancellationToken cancellation)
    {
        var (reading, buck, json) = (new ReadingOptions(), new BuckOptions(), RunOptions.JsonOption());
        buck.AddTo(command);
        reading.AddTo(command);
        command.Add(OptionGroup.Output, json);
        command.SetAction(parsed =>
        {
            var job = buck.Job(parsed, parsed.GetValue(outline)!, reading, buck.Extensions(parsed, terminal), withSheet: true)
                .WithoutPrediction();
            var plan = BuckRun.Plan(terminal, job, BuckRun.Here, cancellation);
            var summary = Summary.Create(plan, "", []);
            if (parsed.GetValue(json)) terminal.WriteJson(SummaryJson.Write(summary));
            else
            {
                BlankPrinter.Print(terminal.Printer(), summary);
                FindingsPrinter.Print(terminal.Printer(), summary.Findings);
            }

            return plan.HasErrors ? ExitStatus.DesignHasErrors : ExitStatus.Done;
        });
    }
}
