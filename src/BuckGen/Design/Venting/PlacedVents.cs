using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>The vents placed so far on all floors.</summary>
/// <param name="apart">Minimum distance of two vents, mm.</param>
internal sealed class PlacedVents(double apart)
{
    private readonly List<Vent> vents = [];
    private readonly PlaceGrid places = new(apart);

    /// <summary>All of them, in the order in which they were placed.</summary>
    public IReadOnlyList<Vent> All => vents;

    /// <summary>Adds a vent.</summary>
    public void Add(Vent vent)
    {
        vents.Add(vent);
        places.Add(vent.Centre);
    }

    /// <summary>True when a vent at a place would be too near to another.</summary>
    public bool IsTaken(Vec2 place) => places.HasWithin(place, apart);

    /// <summary>The vents of a layer that are too near to a place for another.</summary>
    public IEnumerable<Vent> Beside(Vec2 place, int layer) =>
        places.Within(place, apart).Select(i => vents[i]).Where(v => v.Layer == layer);

    /// <summary>The vents of a layer in a rectangle.</summary>
    public IEnumerable<Vent> Inside(Bounds bounds, int layer) =>
        places.Inside(bounds).Select(i => vents[i]).Where(v => v.Layer == layer);
}
