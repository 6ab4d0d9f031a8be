using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Physics.Heat;
using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>The panel that the part shows through, its flange behind.</summary>
/// <param name="Opening">What is cut out of the panel for the part.</param>
/// <param name="Fit">Room between part and opening on every side, mm.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Inlays">Pieces of panel that lie in counters of the part and come loose; null when there are none.</param>
/// <param name="Findings">What its maker should know.</param>
public sealed record FacePanel(Region Opening, double Fit, Layer Panel, Layer? Inlays, ImmutableArray<Finding> Findings)
    : JigParts([Panel, .. Inlays is null ? Array.Empty<Layer>() : [Inlays]], Findings)
{
    /// <summary>
    /// Growth per °C where the plastic is not known; the upper end of ABS, PMMA and PC (data tables, from memory).
    /// </summary>
    private const double Expansion = 90e-6;

    private const double Millionth = 1e-6;

    /// <summary>Warmth between workshop and a window in the sun, °C (common practice, no source).</summary>
    private const double Warming = 30;

    internal static FacePanel Create(PartShell shell, PanelSpec panel, TrimmingSpec spec)
    {
        if (panel.Plane >= shell.Depth)
            throw new SpecException(FormattableString.Invariant(
                $"The plane of the panel is {panel.Plane} mm above the flange, but the part is only {shell.Depth:0.##} ")
                + "mm deep.");
        var part = shell.Outside(panel.Plane);
        var wanted = FitFor(part.Bounds, panel.Stock, spec.Sheet);
        var fit = panel.Fit ?? wanted;
        var opening = shell.Moved(part, fit);
        if (opening.IsEmpty)
            throw new SpecException(FormattableString.Invariant(
                $"The fit of the panel is {fit:0.##} mm: a press fit so tight that no opening is left for a part ")
                + FormattableString.Invariant(
                    $"{Math.Min(part.Bounds.Width, part.Bounds.Height):0.##} mm wide; use a looser fit."));
        var holes = PartShell.Filled(opening);
        var edge = Edge(shell, panel, holes);
        // An opening that reaches over a drawn edge can't be cut out of it; a finding says so.
        var over = PanelEdgeCheck.ReachesOver(edge, holes, spec.Stack.Tolerance);
        var wood = over is null ? Region.FromLoops(holes.Loops.Concat(edge.Loops)) : edge;
        // What lies inside a counter is no part of the panel any more.
        var outside = holes.Islands.Select(i => i.Outer).ToHashSet();
        var inlays = Region.FromLoops(opening.Loops.Where(l => !outside.Contains(l))).Islands;
        return new(opening, fit,
            PlainLayers.Create(1, LayerRole.Panel, "PANEL", panel.Stock, 0, wood, [], spec.Stack.LetterHeight,
                markedOnBack: true),
            inlays.IsEmpty
                ? null
                : PlainLayers.Create(1, LayerRole.Panel, "INLAY", panel.Stock, 0, new(inlays), [], spec.Stack.LetterHeight,
                    markedOnBack: true),
            [.. over is { } place ? [PanelEdgeCheck.Finding(place)] : Array.Empty<Finding>(),
                .. PanelFindings.Find(shell, panel, opening, wood, inlays, fit, wanted, spec.Checks)]);
    }

    /// <summary>
    /// What the part may be off on either side, and what it grows more than the panel on either side. Between 0.5 and 1 mm below
    /// 300 mm is common practice (no source).
    /// </summary>
    internal static double FitFor(Bounds part, Stock stock, SheetSpec sheet)
    {
        var length = Math.Max(part.Width, part.Height);
        var perDegree = (sheet.Plastic?.Expansion?.High * Millionth ?? Expansion)
            - (stock.Material?.Expansion?.Low * Millionth ?? 0);
        return (PartTolerance.Formed.At(length) + ThermalGrowth.LengthChange(length, Math.Max(0, perDegree), Warming)) / 2;
    }

    private static Region Edge(PartShell shell, PanelSpec panel, Region holes)
    {
        if (panel.Outline is { } drawn) return drawn;
        if (panel.Edge == PanelEdge.Offset) return PartShell.Filled(shell.Moved(holes, panel.Margin));
        return RoundedRectangle.Create(shell, holes.Bounds.Grown(panel.Margin), panel.CornerRadius, "panel");
    }
}
