using BuckGen.Reports;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>Prints findings, the gravest first.</summary>
internal static class FindingsPrinter
{
    public static void Print(IAnsiConsole console, IReadOnlyList<FindingReport> findings)
    {
        if (findings.Count == 0)
        {
            console.WriteLine("No findings: nothing speaks against cutting this.");
            return;
        }

        foreach (var finding in findings)
        {
            var colour = finding.Severity switch { "error" => "red", "warning" => "yellow", _ => "grey" };
            var place = finding is { X: { } x, Y: { } y } ? FormattableString.Invariant($" at ({x:0.#}, {y:0.#})") : "";
            console.MarkupLine($"[{colour}]{finding.Severity.ToUpperInvariant()}[/] {Markup.Escape(finding.Message)}{Markup.Escape(place)} [grey]({finding.Id})[/]");
            console.MarkupLine($"  {Markup.Escape(finding.Remedy)}");
        }
    }
}
