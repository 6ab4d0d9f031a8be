using System.CommandLine;
using System.Text;
using BuckGen.Catalogs;
using BuckGen.Cli.Printing;
using BuckGen.Reports;

namespace BuckGen.Cli.Commands;

/// <summary>buckgen catalog: known sheets and plastics with the sources of their figures.</summary>
internal static class CatalogCommand
{
    public static Command Create(Terminal terminal)
    {
        var json = RunOptions.JsonOption();
        var command = new Command("catalog", "List known sheets and plastics with the sources of their figures.\n\n  buckgen catalog\n  buckgen catalog --json") { json };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(json)) terminal.Out.Write(Encoding.UTF8.GetString([.. SummaryJson.Write(Catalog.BuiltIn)]));
            else CatalogPrinter.Print(terminal.Console(), Catalog.BuiltIn);
            return ExitStatus.Done;
        });
        return command;
    }
}
