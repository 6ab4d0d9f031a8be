using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Printing;
using BuckGen.Cli.Terminals;
using BuckGen.Jobs;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen check FILE: only the findings; nothing is written.</summary>
internal static class CheckCommand
{
    public static HelpedCommand Create(Terminal terminal, CancellationToken cancellation)
    {
        var file = JobOrDrawing.Argument("--depth and --stock");
        var command = new HelpedCommand("check", CommandGroup.Look, "Say what could go wrong, and write nothing.")
        {
            Examples = ["buckgen check job.toml", "buckgen check sign.svg --depth 18mm --stock 6mm"],
        };
        command.Add(file);
        return command.WhenNamed(() => Complete(command, file, terminal, cancellation));
    }

    private static void Complete(
        HelpedCommand command, Argument<string> file, Terminal terminal, CancellationToken cancellation)
    {
        var (reading, buck, json) = (new ReadingOptions(), new BuckOptions(), RunOptions.JsonOption());
        buck.AddTo(command);
        reading.AddTo(command);
        command.Add(OptionGroup.Output, json);
        var source = new JobOrDrawing(command, reading, buck, json);
        command.SetAction(parsed =>
        {
            var (job, plan) = source.Plan(parsed.GetValue(file)!, parsed, terminal, job => job, cancellation);
            var lid = JobRunner.PlanLid(job, plan, null, cancellation);
            var summary = Summary.Create(plan, job.Title, []);
            if (parsed.GetValue(json))
            {
                terminal.WriteJson(SummaryJson.Write(summary));
                if (lid is { HasErrors: true })
                    terminal.WriteMessage("buckgen: the lid has errors; 'check' without --json lists them.");
            }
            else
            {
                var printer = terminal.Printer();
                FindingsPrinter.Print(printer, summary.Findings);
                if (lid is not null)
                {
                    printer.Line();
                    printer.Line("The lid:");
                    FindingsPrinter.Print(printer, Summary.Create(lid, "", []).Findings);
                }
            }

            return plan.HasErrors || lid is { HasErrors: true } ? ExitStatus.DesignHasErrors : ExitStatus.Done;
        });
    }
}
