using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Printing;
using BuckGen.Cli.Terminals;
using BuckGen.Output.Pictures;
using BuckGen.Output.Reports;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen inspect OUTLINE: what was read from a drawing.</summary>
internal static class InspectCommand
{
    public static HelpedCommand Create(Terminal terminal, CancellationToken cancellation)
    {
        var outline = BuckCommand.OutlineArgument();
        var command = new HelpedCommand("inspect", CommandGroup.Look, "Show what is read from a drawing, and its repairs.")
        {
            Examples = ["buckgen inspect sign.svg", "buckgen inspect plate.dxf --units in",
                "buckgen inspect sign.svg --svg repairs.svg"],
        };
        command.Add(outline);
        return command.WhenNamed(() => Complete(command, outline, terminal, cancellation));
    }

    private static void Complete(
        HelpedCommand command, Argument<string> outline, Terminal terminal, CancellationToken cancellation)
    {
        var (reading, plugins, json) = (new ReadingOptions(), new PluginOptions(), RunOptions.JsonOption());
        var svg = new Option<string?>("--svg") { Description = "Draw the outline with its repairs numbered.", HelpName = "FILE" };
        reading.AddTo(command);
        plugins.AddTo(command);
        command.Add(OptionGroup.Output, svg, json);
        command.SetAction(parsed =>
        {
            var read = BuckRun
                .Read(parsed.GetValue(outline)!, reading.Read(parsed, plugins.Extensions(parsed, terminal)), cancellation);
            if (parsed.GetValue(svg) is { } picture) PictureFile.Write("--svg", picture, OutlinePicture.Draw(read));
            var report = OutlineReport.Create(read, cancellation);
            if (parsed.GetValue(json)) terminal.WriteJson(SummaryJson.Write(report));
            else OutlinePrinter.Print(terminal.Printer(), report);
            return ExitStatus.Done;
        });
    }
}
