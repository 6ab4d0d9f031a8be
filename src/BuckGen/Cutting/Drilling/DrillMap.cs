using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;
using BuckGen.Quantities;

namespace BuckGen.Cutting.Drilling;

/// <summary>What is drilled in a design.</summary>
internal static class DrillMap
{
    /// <summary>A bore is drilled from below into the surface layer when at least this much of it is left to drill, mm.</summary>
    private const double WorthBoring = 1;

    /// <summary>Everything drilled from the top face of its layer, right through.</summary>
    public static IEnumerable<DrillHole> FromAbove(BuckDesign design)
    {
        var drills = DrillSeries.Of(design.Vents?.Spec.Drills ?? Drills.Metric);
        var reasons = (design.Vents?.Vents ?? []).DistinctBy(v => v.Centre).ToDictionary(v => v.Centre, v => v.Reason);
        return
            from layer in design.Layers
            from part in layer.Parts
            from vent in part.Vents
            let reason = vent.IsBore ? "relief bore" : Words.Format(reasons[vent.Centre])
            select new DrillHole(vent.Centre, vent.Diameter, layer.Thickness, layer.Number, reason)
            {
                Drill = drills.NameOf(vent.Diameter),
            };
    }

    /// <summary>Relief bores into a thick surface layer that has no plate of its own for them under it.</summary>
    public static IEnumerable<DrillHole> FromBelow(BuckDesign design)
    {
        if (design.Vents is not { } vents || design.Spec.Base?.Under is not null) yield break;
        var surface = design.Layers.Last(l => l.Role == LayerRole.Base);
        var depth = surface.Thickness - vents.Spec.FaceThickness;
        if (depth < WorthBoring) yield break;
        foreach (var vent in vents.Vents)
            yield return new(vent.Centre, vents.Spec.BoreDiameter, depth, surface.Number, "relief bore from below");
    }

    /// <summary>The holes that the cutting machine does not make.</summary>
    /// <param name="design">The design.</param>
    /// <param name="minDiameter">Minimum diameter of a hole that the machine makes, by the thickness of the board, mm.</param>
    public static IEnumerable<DrillHole> ByHand(BuckDesign design, Func<double, double> minDiameter) =>
        FromAbove(design).Where(h => h.Diameter < minDiameter(h.Depth)).Concat(FromBelow(design));
}
