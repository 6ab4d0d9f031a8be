using System.Collections.Immutable;
using BuckGen.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Trimming;

/// <summary>The panel that the part shows through, its flange behind.</summary>
/// <param name="Opening">What is cut out of the panel for the part.</param>
/// <param name="Fit">Room between part and opening on every side, mm.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Inlays">Pieces of panel that lie in counters of the part and come loose; null when there are none.</param>
/// <param name="Findings">What its maker should know.</param>
public sealed record FacePanel(Region Opening, double Fit, Layer Panel, Layer? Inlays, ImmutableArray<Finding> Findings)
{
    /// <summary>Usual fit below 300 mm, mm (common practice, no source).</summary>
    private const double UsualFit = 0.5;

    /// <summary>Growth per °C where the plastic is not known; the upper end of ABS, PMMA and PC (data tables, from memory).</summary>
    private const double Expansion = 90e-6;

    /// <summary>Warmth between workshop and a window in the sun, °C (common practice, no source).</summary>
    private const double Warming = 30;

    internal static FacePanel Of(PartShell shell, PanelSpec panel, BuckSpec spec)
    {
        if (panel.Plane >= shell.Depth)
            throw new SpecException(FormattableString.Invariant(
                $"The plane of the panel is {panel.Plane} mm above the flange, but the part is only {shell.Depth:0.##} mm deep."));
        var part = shell.Outside(panel.Plane);
        var fit = panel.Fit ?? FitFor(part.Bounds);
        var opening = shell.Moved(part, fit);
        var holes = PartShell.Filled(opening);
        var wood = Region.FromLoops(holes.Loops.Concat(Edge(shell, panel, holes).Loops));
        // What lies inside a counter is no part of the panel any more.
        var outside = holes.Islands.Select(i => i.Outer).ToHashSet();
        var inlays = Region.FromLoops(opening.Loops.Where(l => !outside.Contains(l))).Islands;
        return new(opening, fit,
            PlainLayers.Of(1, LayerRole.Panel, "PANEL", panel.Stock, 0, wood, [], spec.LetterHeight),
            inlays.IsEmpty ? null : PlainLayers.Of(1, LayerRole.Panel, "INLAY", panel.Stock, 0, new(inlays), [], spec.LetterHeight),
            [.. PanelFindings.Of(shell, panel, opening, wood, inlays, fit)]);
    }

    /// <summary>The usual fit, or half of what the part grows when it warms, whichever is more.</summary>
    private static double FitFor(Bounds part) => Math.Max(UsualFit, Math.Max(part.Width, part.Height) * Expansion * Warming / 2);

    private static Region Edge(PartShell shell, PanelSpec panel, Region holes)
    {
        if (panel.Edge == PanelEdge.Offset) return PartShell.Filled(shell.Moved(holes, panel.Margin));
        var box = holes.Bounds.Grown(panel.Margin);
        var radius = Math.Min(panel.CornerRadius, Math.Min(box.Width, box.Height) / 2);
        var core = box.Grown(-radius);
        return radius == 0 || core.Width <= 0 || core.Height <= 0
            ? new([new(Loop.Rectangle(box), [])])
            : shell.Moved(new([new(Loop.Rectangle(core), [])]), radius);
    }
}
