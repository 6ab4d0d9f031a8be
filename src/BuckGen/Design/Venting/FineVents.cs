using BuckGen.Findings;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Venting;

/// <summary>Vents too fine to drill by hand, and what a shop does instead. Lengths in mm.</summary>
internal static class FineVents
{
    /// <summary>
    /// A drill goes in as far as this many times its diameter before its flutes clog (common practice, no source).
    /// </summary>
    private const double FluteRatio = 10;

    /// <summary>Depth of a groove in the underside of the lowest layer: the sheet does not sink into it (no source).</summary>
    private const double GrooveDepth = 0.3;

    /// <summary>The finding; none when the drill is one that a shop uses.</summary>
    /// <param name="count">How many vents there are.</param>
    /// <param name="diameter">Their diameter.</param>
    /// <param name="length">How deep the narrow hole goes.</param>
    /// <param name="spec">What is wanted.</param>
    /// <param name="sizing">How wide they may be.</param>
    /// <param name="gauge">Thickness of the sheet before forming.</param>
    public static IEnumerable<Finding> Find(
        int count, double diameter, double length, VentSpec spec, VentSizing sizing, double gauge)
    {
        if (count == 0 || diameter >= spec.MinDrill) yield break;
        var drills = DrillSeries.Of(spec.Drills);
        yield return new("vents-too-fine", Severity.Warning,
            FormattableString.Invariant($"{count} vents of {drills.Describe(diameter)} are finer than the ")
                + FormattableString.Invariant($"{spec.MinDrill:0.0##} mm that are drilled by hand: such drills break and ")
                + (length > FluteRatio * diameter
                    ? FormattableString.Invariant($"wander in wood, and these go {length:0.##} mm deep, over {FluteRatio:0} ")
                        + "times their width"
                    : "wander in wood")
                + FormattableString.Invariant($". Holes over {sizing.MaxDiameter:0.##} mm would mark the part."),
            string.Join(' ', Remedies(count, diameter, length, spec, sizing, gauge)))
        {
            Value = diameter,
            Limit = spec.MinDrill,
            Source = "common practice, no source",
        };
    }

    private static IEnumerable<string> Remedies(
        int count, double diameter, double length, VentSpec spec, VentSizing sizing, double gauge)
    {
        var width = Math.Ceiling(Math.PI / 4 * diameter * diameter / GrooveDepth * 10) / 10;
        yield return FormattableString.Invariant($"Drill none of them: bore {spec.BoreDiameter:0.##} mm through the base ")
            + FormattableString.Invariant($"under the lowest layer, and file {count} grooves {GrooveDepth:0.##} mm deep and ")
            + FormattableString.Invariant($"{width:0.#} mm wide to the bores from where the vents are drawn; each has the area ")
            + "of one vent.";
        // Only where the sheet itself sets the limit does a thicker one help.
        if (sizing.MaxDiameter >= sizing.FormedThickness)
            yield return FormattableString.Invariant(
                $"Or use a sheet of {Math.Ceiling(gauge * spec.MinDrill / sizing.FormedThickness * 10) / 10:0.#} mm, which ")
                + FormattableString.Invariant($"takes holes of {spec.MinDrill:0.0##} mm.");
        if (length > FluteRatio * diameter)
            yield return FormattableString.Invariant($"Or bore from below, with \"under\" in [base], and leave at most ")
                + FormattableString.Invariant($"{FluteRatio * diameter:0.#} mm of wood over the bores.");
    }
}
