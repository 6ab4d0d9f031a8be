
namespace BuckGen.Cli.Printing;

/// <summary>The usual cautions for the work.</summary>
internal static class Cautions
{
    public static void Print(Printer printer)
    {
        printer.Line("Take care: exhaust and a watchful eye at the laser, never PVC or vinyl in it; a mask against");
        printer.Line("wood dust; gloves at the heater; guards at router and knives. A wooden buck is not a food-safe");
        printer.Line("tool. Local rules, the supplier's data sheet and licensed practice come first.");
    }
}
