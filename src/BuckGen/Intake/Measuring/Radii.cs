using BuckGen.Geometry.Facing;

namespace BuckGen.Intake.Measuring;

/// <summary>Finds the tightest arcs.</summary>
internal static class Radii
{
    /// <summary>Arcs that leave their chord by less, mm, are lines but for rounding, whatever radius they have.</summary>
    private const double Flat = 1e-5;

    /// <summary>Radii that differ by less, mm, are equal: so that rounding does not choose between them.</summary>
    private const double Same = 1e-6;

    /// <summary>The smallest radius, the lowest and then the leftmost of equals; null without such arcs.</summary>
    /// <param name="pieces">The edge, region to the left.</param>
    /// <param name="inside">True for arcs round open space, false for arcs round the region.</param>
    public static RoundEdge? Min(EdgePiece[] pieces, bool inside)
    {
        var arcs = pieces.Select(p => p.Segment).Where(s => s.IsArc && s.Bulge < 0 == inside && s.Sagitta >= Flat).ToList();
        if (arcs.Count == 0) return null;
        var least = arcs.Min(s => s.Radius);
        var arc = arcs.Where(s => s.Radius <= least + Same).MinBy(s => PlaceOrder.SortKey(s.PointAt(0.5)));
        return new(arc.Radius, arc.Centre, arc.PointAt(0.5));
    }
}
