using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>
/// Grants wishes for vents on a floor one after another: what is in the way of a vent or its bore makes it give way or go.
/// </summary>
/// <param name="floor">The floor.</param>
/// <param name="room">Where there is wood for a bore.</param>
/// <param name="spec">Spacing and distance from the wall.</param>
/// <param name="diameter">Diameter of the hole at the surface, mm.</param>
/// <param name="taken">The vents of all floors placed so far; new ones are added.</param>
internal sealed class VentPlacement(AirFloor floor, BoreRoom room, VentSpec spec, double diameter, PlacedVents taken)
{
    /// <summary>How far a vent is moved at a time when it gives way, mm.</summary>
    private const double Step = 1;

    /// <summary>The hole never reaches under the wall, however narrow the place: half the wanted distance is kept, mm.</summary>
    private readonly double minToWall = (diameter + spec.WallDistance) / 2;

    /// <summary>The vents on this floor's layer in a rectangle.</summary>
    public IEnumerable<Vent> Inside(Bounds bounds) => taken.Inside(bounds, floor.Layer.Number);

    /// <summary>Places a vent where it is wished or as near to it as may be; false when there is no place.</summary>
    public bool TryPlace(VentCandidate wish)
    {
        foreach (var place in Places(wish))
        {
            if (!room.IsFree(place, floor.Layer) || taken.IsTaken(place)) continue;
            if (floor.ToWall(place, minToWall) < minToWall) continue;
            taken.Add(new(place, diameter, floor.Layer.Number, wish.Reason));
            return true;
        }

        return false;
    }

    /// <summary>
    /// True when another vent already does the work of this one: it draws from the same air, and their bores would run into each
    /// other. One behind a wall does not.
    /// </summary>
    public bool IsDone(VentCandidate wish) =>
        taken.Beside(wish.Centre, floor.Layer.Number).Any(t => floor.Sees(t.Centre, wish.Centre));

    private IEnumerable<Vec2> Places(VentCandidate wish)
    {
        yield return wish.Centre;
        if (wish.Way is not { } way) yield break;
        for (var away = Step; away <= spec.Spacing / 2; away += Step)
        {
            yield return way(wish.Along + away);
            yield return way(wish.Along - away);
        }
    }
}
