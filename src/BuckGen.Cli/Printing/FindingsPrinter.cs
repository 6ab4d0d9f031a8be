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

        // Findings that differ only in their place and numbers are told once; failures of plug-ins differ in whose they are.
        foreach (var group in findings.GroupBy(f => (f.Severity, f.Id, Whose: f.Id == "plugin-failed" ? f.Message : "")))
        {
            var finding = group.First();
            var colour = finding.Severity switch { "error" => "red", "warning" => "yellow", _ => "grey" };
            var place = finding is { X: { } x, Y: { } y } ? FormattableString.Invariant($" at ({x:0.#}, {y:0.#})") : "";
            console.MarkupLine($"[{colour}]{finding.Severity.ToUpperInvariant()}[/] {Markup.Escape(finding.Message)}{Markup.Escape(place)} [grey]({finding.Id})[/]");
            if (group.Count() > 1) console.WriteLine($"  ... and {group.Count() - 1} more like it; summary.json has them all.");
            console.WriteLine(finding.Silenced is { } reason ? $"  Silenced: {reason}" : $"  {finding.Remedy}");
        }
    }
}
