using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Venting;

/// <summary>Tells where a vent and its bore have wood all round them, in every layer they go through.</summary>
internal sealed class BoreRoom
{
    private readonly VentSpec spec;
    private readonly double diameter;
    private readonly (LayerBlank Layer, SegmentIndex Edges, RegionInterior Wood)[] layers;
    private readonly DowelHole[] dowels;
    private readonly PlaceGrid centres;
    private readonly double widest;

    /// <param name="layers">The layers without a plenum, lowest first.</param>
    /// <param name="dowels">All dowel holes.</param>
    /// <param name="spec">Bore, land, keep-out.</param>
    /// <param name="diameter">Diameter of the hole at the surface, mm.</param>
    public BoreRoom(IEnumerable<LayerBlank> layers, IEnumerable<DowelHole> dowels, VentSpec spec, double diameter)
    {
        (this.spec, this.diameter) = (spec, diameter);
        this.layers = [.. layers.Select(l => (l, new SegmentIndex(l.Wood.Segments), new RegionInterior(l.Wood)))];
        this.dowels = [.. dowels.Distinct()];
        widest = this.dowels.Select(d => d.Diameter / 2).DefaultIfEmpty().Max() + spec.BoreDiameter / 2 + spec.Land;
        centres = new(widest);
        foreach (var dowel in this.dowels) centres.Add(dowel.Centre);
    }

    /// <summary>Minimum distance of two vents, mm.</summary>
    public double Apart => spec.BoreDiameter + spec.Land;

    /// <summary>True when a vent that opens on a layer may stand at a place.</summary>
    public bool IsFree(Vec2 p, LayerBlank surface)
    {
        if (spec.KeepOut.Any(k => k.Contains(p))) return false;
        if (centres.Within(p, widest)
            .Any(i => dowels[i].Centre.DistanceTo(p) < dowels[i].Diameter / 2 + spec.BoreDiameter / 2 + spec.Land)) return false;
        foreach (var (layer, edges, wood) in layers)
        {
            if (layer.Number > surface.Number) break;
            // A pit opens with the narrow hole alone; a base may be bored from below.
            var hole = layer == surface && layer.Role == LayerRole.Wall ? diameter : spec.BoreDiameter;
            var free = hole / 2 + spec.Land;
            if (edges.DistanceWithin(p, free) < free || !wood.Contains(p)) return false;
        }

        return true;
    }
}
