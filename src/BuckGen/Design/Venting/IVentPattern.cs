using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>A way to place vents on the level floors round and inside what stands on the base.</summary>
public interface IVentPattern
{
    /// <summary>Its name in job files, such as "grid".</summary>
    string Name { get; }

    /// <summary>
    /// True when vents also go along the foot of every wall, corners first, no farther apart than <see cref="VentSpec.Spacing"/>.
    /// </summary>
    bool AlongWalls => false;

    /// <summary>
    /// Further places on a floor. Every counter, gap and pit has its vent besides. Places outside the floor's room are left out;
    /// a place without room for a bore becomes a finding.
    /// </summary>
    /// <param name="floor">The floor.</param>
    /// <param name="spec">What the maker wants.</param>
    IEnumerable<Vec2> Places(VentFloor floor, VentSpec spec);
}

/// <summary>A level floor on which the sheet comes down last, in the design's coordinates.</summary>
/// <param name="Air">The air over it: its edges are walls, or the edge of the plate.</param>
/// <param name="Room">Where the middle of a vent may lie, clear of walls and edge.</param>
public sealed record VentFloor(Island Air, Region Room);
