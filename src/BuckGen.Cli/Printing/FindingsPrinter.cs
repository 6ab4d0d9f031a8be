using BuckGen.Output.Reports;
using Spectre.Console;

namespace BuckGen.Cli.Printing;

/// <summary>Prints findings, the most severe first.</summary>
internal static class FindingsPrinter
{
    public static void Print(Printer printer, IReadOnlyList<FindingReport> findings)
    {
        if (findings.Count == 0)
        {
            printer.Line("No findings: the design can be cut.");
            return;
        }

        // Findings of one kind are printed once; the page and the summary list them all.
        foreach (var group in findings.GroupBy(f => f.Number))
        {
            var finding = group.First();
            var colour = finding.Severity switch { "error" => Color.Red, "warning" => Color.Yellow, _ => Color.Grey };
            var place = finding is { X: { } x, Y: { } y } ? FormattableString.Invariant($" at ({x:0.#}, {y:0.#})") : "";
            printer.Line(new(finding.Severity.ToUpperInvariant(), colour), new($" {finding.Message}"), new($"{place} "),
                new($"({finding.Id})", Color.Grey));
            if (group.Count() > 1) printer.Line($"  ... and {group.Count() - 1} more like it; summary.json has them all.");
            printer.Line(finding.Silenced is { } reason ? $"  Silenced: {reason}" : $"  {finding.Remedy}");
        }
    }
}
