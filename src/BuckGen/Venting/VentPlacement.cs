using BuckGen.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Venting;

/// <summary>Grants wishes for vents one after another: what is in the way of a vent or its bore makes it give way or go.</summary>
internal sealed class VentPlacement
{
    /// <summary>How far a vent is moved at a time when it gives way, mm.</summary>
    private const double Step = 1;

    private readonly VentSpec spec;
    private readonly double diameter;
    private readonly IReadOnlyList<LayerBlank> below;
    private readonly List<SegmentIndex> edges;
    private readonly DowelHole[] dowels;
    private readonly List<Vec2> taken;

    /// <param name="surface">The layer on whose top face the vents open.</param>
    /// <param name="layers">All layers.</param>
    /// <param name="dowels">All dowel holes.</param>
    /// <param name="taken">Centres of vents placed before; new ones are added.</param>
    /// <param name="spec">Bore, land, keep-out.</param>
    /// <param name="diameter">Diameter of the hole at the surface, mm.</param>
    public VentPlacement(
        LayerBlank surface, IReadOnlyList<LayerBlank> layers, IEnumerable<DowelHole> dowels, List<Vec2> taken, VentSpec spec, double diameter)
    {
        (this.spec, this.diameter, this.taken) = (spec, diameter, taken);
        below = [.. layers.Where(l => l.Number <= surface.Number && l.Role != LayerRole.Plenum)];
        edges = [.. below.Select(l => new SegmentIndex(l.Wood.Segments))];
        this.dowels = [.. dowels];
    }

    /// <summary>The place granted, or null when there is none.</summary>
    /// <param name="wish">The wished place.</param>
    /// <param name="walls">The walls on the floor; a vent keeps clear of them.</param>
    public Vec2? Grant(VentWish wish, SegmentIndex walls)
    {
        foreach (var place in Places(wish))
        {
            if (!IsFree(place) || walls.DistanceWithin(place, diameter / 2 + spec.WallDistance / 2) <= diameter / 2 + spec.WallDistance / 2) continue;
            taken.Add(place);
            return place;
        }

        return null;
    }

    /// <summary>True when another vent already does the work of this one: their bores would run into each other.</summary>
    public bool IsDouble(VentWish wish) => taken.Exists(t => t.DistanceTo(wish.Centre) < spec.BoreDiameter + spec.Land);

    private IEnumerable<Vec2> Places(VentWish wish)
    {
        yield return wish.Centre;
        if (wish.Row is not { } row) yield break;
        for (var away = Step; away <= spec.Spacing / 2; away += Step)
        {
            yield return row.PointAt(wish.Along + away);
            yield return row.PointAt(wish.Along - away);
        }
    }

    private bool IsFree(Vec2 p)
    {
        var bore = spec.BoreDiameter / 2;
        if (spec.KeepOut.Any(k => k.Contains(p))) return false;
        if (dowels.Any(d => d.Centre.DistanceTo(p) < d.Diameter / 2 + bore + spec.Land)) return false;
        if (taken.Exists(t => t.DistanceTo(p) < spec.BoreDiameter + spec.Land)) return false;
        for (var i = 0; i < below.Count; i++)
            if (!below[i].Wood.Contains(p) || edges[i].DistanceWithin(p, bore + spec.Land) < bore + spec.Land) return false;
        return true;
    }
}
