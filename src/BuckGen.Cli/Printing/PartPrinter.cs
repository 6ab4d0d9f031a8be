using BuckGen.Output.Reports;

namespace BuckGen.Cli.Printing;

/// <summary>Prints the finished part.</summary>
internal static class PartPrinter
{
    public static void Print(Printer printer, PartReport? part)
    {
        if (part is null) return;
        printer.Line("Finished part:");
        foreach (var (what, text) in PartRows.Create(part)) printer.Line($"  {what,-13} {text}");
    }
}
