using System.CommandLine;
using System.Text;
using BuckGen.Cli.Printing;
using BuckGen.Reports;
using BuckGen.Sheets;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen check FILE: only the findings; nothing is written.</summary>
internal static class CheckCommand
{
    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var file = new Argument<string>("FILE") { Description = "A job file (TOML), or a drawing (then --depth and --stock are needed)." };
        var (reading, buck, json) = (new ReadingOptions(), new BuckOptions(), RunOptions.JsonOption());
        var command = new Command("check",
            "Say what could go wrong, and write nothing.\n\n  buckgen check job.toml\n  buckgen check sign.svg --depth 18mm --stock 6mm") { file };
        buck.AddTo(command);
        reading.AddTo(command);
        command.Add(json);
        command.SetAction(parsed =>
        {
            var (title, plan) = Plan(parsed.GetValue(file)!, parsed);
            var summary = Summary.Of(plan, title, []);
            if (parsed.GetValue(json)) terminal.Out.Write(Encoding.UTF8.GetString([.. SummaryJson.Write(summary)]));
            else FindingsPrinter.Print(terminal.Console(), summary.Findings);
            return plan.HasErrors ? ExitStatus.DesignHasErrors : ExitStatus.Done;
        });
        return command;

        (string Title, CutPlan Plan) Plan(string path, ParseResult parsed)
        {
            if (Path.GetExtension(path).Equals(".toml", StringComparison.OrdinalIgnoreCase))
            {
                if (command.Options.FirstOrDefault(o => o != json && o != buck.Plugins.Folder && parsed.GetResult(o) is { Implicit: false }) is { } beside)
                    throw new UsageException($"{beside.Name} does nothing beside a job file; set it in {path}.");
                var job = MakeCommand.ReadJob(path, buck.Plugins, parsed, terminal);
                var drawn = BuckRun.Read(MakeCommand.OutlinePath(path, job), job.Reading);
                return (job.Title, BuckRun.FormedPlan(terminal, drawn, job.Buck, job.PredictWall ? job.Forming : null, job.Cutting, job.Design, cancellation));
            }

            var extensions = buck.Extensions(parsed, terminal);
            var how = reading.Of(parsed, extensions);
            var spec = buck.Buck(parsed, how, extensions);
            return ("", BuckRun.Plan(terminal, BuckRun.Read(path, how), spec, buck.Cutting(parsed), extensions.Design, cancellation));
        }
    }
}
