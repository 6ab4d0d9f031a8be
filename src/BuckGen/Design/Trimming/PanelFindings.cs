using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Checks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Facing;

namespace BuckGen.Design.Trimming;

/// <summary>What a maker should know about a face panel.</summary>
internal static class PanelFindings
{
    public static IEnumerable<Finding> Find(
        PartShell shell, PanelSpec panel, Region opening, Region wood, ImmutableArray<Island> inlays, double fit, double wanted,
        CheckSpec checks)
    {
        var land = panel.Flange + Narrower(shell, panel.Plane) - fit;
        if (land < checks.MinGlueLand)
            yield return new("panel-flange-narrow", land <= 0 ? Severity.Error : Severity.Warning,
                FormattableString.Invariant($"A flange of {panel.Flange:0.##} mm overlaps the panel by {Math.Max(0, land):0.##} ")
                    + FormattableString.Invariant($"mm{(land <= 0 ? ": the part falls through" : "")}."),
                "Leave a wider flange on the part, or a closer fit.")
            {
                Value = land,
                Limit = checks.MinGlueLand,
                Source = "common practice, no source",
            };
        if (fit < wanted)
            yield return new("panel-fit-close", Severity.Note,
                FormattableString.Invariant(
                    $"{(fit < 0 ? "A press fit" : "A fit")} of {fit:0.##} mm is close: with its tolerances and its growth ")
                    + FormattableString.Invariant($"when warm, the part may need {wanted:0.##} mm."),
                "Try the part before the panel is finished; file the opening where it binds.")
            {
                Value = fit,
                Limit = wanted,
                Source = "a former's tolerances for prototype tools, expansion of the plastic over 30 degrees C",
            };
        if (panel.Bit > 0)
            // What sticks out of the part is an inside corner of the panel.
            foreach (var corner in opening.Islands.SelectMany(i => TightTurn.Find(i.Outer, panel.Bit / 2)).Where(t => t.Left))
                yield return new("panel-corner-tight", Severity.Warning,
                    FormattableString.Invariant(
                        $"An inside corner of the opening has a radius of {corner.Radius:0.##} mm; a bit of ")
                        + FormattableString.Invariant($"{panel.Bit:0.##} mm leaves {panel.Bit / 2:0.##} mm."),
                    "Use a smaller bit, file the corner by hand, or round the drawing's corner.")
                {
                    Place = corner.Place,
                    Value = corner.Radius,
                    Limit = panel.Bit / 2,
                };
        foreach (var bridge in ThinBridges(wood, panel.Stock, checks, "panel", "panel-bridge-thin")) yield return bridge;
        if (!inlays.IsEmpty)
            yield return new("panel-inlays", Severity.Note,
                $"{inlays.Length} piece{(inlays.Length == 1 ? "" : "s")} of the panel inside counters of the part "
                + $"come{(inlays.Length == 1 ? "s" : "")} loose; {(inlays.Length == 1 ? "it is" : "they are")} cut apart, "
                + "lettered INLAY.",
                "Glue them onto the part.")
            {
                Place = InsidePoint.Find(inlays[0]),
            };
    }

    /// <summary>The narrowest place between two openings of a board, where it is too narrow.</summary>
    public static IEnumerable<Finding> ThinBridges(Region wood, Stock stock, CheckSpec checks, string what, string id)
    {
        var minBridge = checks.MinPanelBridge * stock.Thickness;
        foreach (var bridge in FacingEdges.Within(wood, minBridge, width => 4 * width + 2).Where(p => p.ThroughWood).Take(1))
            yield return new(id, Severity.Warning,
                FormattableString.Invariant($"The {what} is only {bridge.Width:0.##} mm wide between two openings; a board ")
                    + FormattableString.Invariant($"{stock.Thickness:0.##} mm thick breaks there."),
                "Move the shapes apart, or let the part cover the gap.")
            {
                Place = bridge.Middle,
                Value = bridge.Width,
                Limit = minBridge,
                Source = "common practice, no source",
            };
    }

    /// <summary>
    /// How much narrower, on each side, the part is at the panel's plane than at its flange, mm: the flange starts farther out.
    /// </summary>
    private static double Narrower(PartShell shell, double plane) =>
        (shell.Outside(0).Bounds.Width - shell.Outside(plane).Bounds.Width) / 2;
}
