using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>Why a vent is where it is; the most wanted first.</summary>
public enum VentReason
{
    /// <summary>Asked for by the job.</summary>
    Given,

    /// <summary>In a gap or a bay too narrow for a row of vents: the deepest place, the last to close.</summary>
    Gap,

    /// <summary>In a counter or a pit too small for a row of vents.</summary>
    Counter,

    /// <summary>In an inside corner of the plan.</summary>
    Corner,

    /// <summary>Along the foot of a wall.</summary>
    Wall,

    /// <summary>A place of the pattern, such as the grid.</summary>
    Pattern,
}

/// <summary>A vent: a small hole at the surface and a wider bore in everything below.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Diameter">Diameter of the hole at the surface, mm.</param>
/// <param name="Layer">Number of the layer whose top face it opens on.</param>
/// <param name="Reason">Why it is there.</param>
public sealed record Vent(Vec2 Centre, double Diameter, int Layer, VentReason Reason);
