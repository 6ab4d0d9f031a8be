using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Printing;
using BuckGen.Cli.Terminals;
using BuckGen.Design.Prediction;
using BuckGen.Jobs;
using BuckGen.Output.Pictures.Thickness;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Commands;

/// <summary>
/// buckgen form FILE: how thick the wall of the part will be; nothing is written but a picture that is asked for.
/// </summary>
internal static class FormCommand
{
    public static HelpedCommand Create(Terminal terminal, CancellationToken cancellation)
    {
        var file = JobOrDrawing.Argument("--depth, --stock and --gauge");
        var command = new HelpedCommand("form", CommandGroup.Look, "Predict how thick the wall of the part will be.")
        {
            Examples =
            [
                "buckgen form tray.dxf --depth 36mm --stock 6mm --gauge 1mm --map map.svg",
                "buckgen form tray.dxf --depth 36mm --stock 6mm --gauge 1mm --detail fine",
            ],
            Notes = "It also says where the wall is thinnest, where webs stand and what the sheet does not reach. A job "
                + "file needs a [sheet].",
        };
        command.Add(file);
        return command.WhenNamed(() => Complete(command, file, terminal, cancellation));
    }

    private static void Complete(
        HelpedCommand command, Argument<string> file, Terminal terminal, CancellationToken cancellation)
    {
        var (reading, buck, json) = (new ReadingOptions(), new BuckOptions(), RunOptions.JsonOption());
        var detail = QuantityOption.Create(FormingSettings.Detail);
        var stepped =
            QuantityOption.Create(FormingSettings.Stepped, "Form over the steps of the layers, as if they were not sanded.");
        var ball = QuantityOption.Create(FormingSettings.CornerBall);
        var inputs = QuantityOption.Create(FormingSettings.CompareInputs,
            "Show what each uncertain input does to the thinnest wall; takes some seconds.");
        var map = new Option<string?>("--map") { Description = "Draw the thickness as seen from above.", HelpName = "FILE" };
        buck.AddTo(command);
        reading.AddTo(command);
        Option[] own = [detail, stepped, ball, inputs, map, json];
        command.Add(OptionGroup.Prediction, detail, stepped, ball, inputs);
        command.Add(OptionGroup.Output, map, json);
        var source = new JobOrDrawing(command, reading, buck, own);
        command.SetAction(parsed =>
        {
            var (job, plan) = source.Plan(parsed.GetValue(file)!, parsed, terminal, job => Forming(parsed, job), cancellation);
            var summary = Summary.Create(plan, job.Title, []);
            if (parsed.GetValue(map) is not null && !plan.Groups.IsEmpty)
                throw new UsageException(
                    "A sign in several bucks has a map for each of them: 'buckgen make' draws it in the report of every buck.");
            if (parsed.GetValue(map) is { } picture)
                PictureFile.Write("--map", picture, ThicknessMap.Draw(plan.Design)
                    ?? throw new UsageException(
                        "There is no map to draw, because the prediction of the wall did not finish; run it without --map "
                        + "to see why."));
            if (parsed.GetValue(json)) terminal.WriteJson(SummaryJson.Write(summary));
            else
            {
                FormedPrinter.Print(terminal.Printer(), summary.Formed);
                FindingsPrinter.Print(terminal.Printer(), summary.Findings);
            }

            return plan.HasErrors ? ExitStatus.DesignHasErrors : ExitStatus.Done;
        });

        Job Forming(ParseResult parsed, Job job)
        {
            if (job.Buck.Sheet is null)
                throw new UsageException(
                    "There is no sheet to form; give its thickness with --gauge, or in [sheet] of the job file.");
            var usual = job.Forming;
            return job with
            {
                Buck = job.Buck with
                {
                    Prediction = usual with
                    {
                        Detail = parsed.GetValue(detail) ?? usual.Detail,
                        Stepped = parsed.GetResult(stepped) is { Implicit: false } ? parsed.GetValue(stepped) : usual.Stepped,
                        CompareInputs =
                            parsed.GetResult(inputs) is { Implicit: false } ? parsed.GetValue(inputs) : usual.CompareInputs,
                        CornerBall = parsed.GetResult(ball) is { Implicit: false } ? parsed.GetValue(ball)
                            ?? usual.CornerBall : usual.CornerBall,
                    },
                },
            };
        }
    }
}
