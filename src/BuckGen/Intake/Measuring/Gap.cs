using BuckGen.Geometry;

namespace BuckGen.Intake.Measuring;

/// <summary>What lies on the two sides of a gap.</summary>
public enum GapKind
{
    /// <summary>Two parts, or two edges of one that belong to different loops.</summary>
    BetweenParts,

    /// <summary>Two places of one part's outer edge.</summary>
    AcrossSlot,

    /// <summary>Two places of the edge of one hole.</summary>
    InsideHole,
}

/// <summary>
/// A place where two edges face each other across open space; as <see cref="Neck"/>, on the other side of the edge.
/// </summary>
/// <param name="A">One end of the way across.</param>
/// <param name="B">The other end.</param>
/// <param name="Kind">What lies on its two sides.</param>
public sealed record Gap(Vec2 A, Vec2 B, GapKind Kind)
{
    /// <summary>How wide it is, mm.</summary>
    public double Width => A.DistanceTo(B);

    /// <summary>Its middle.</summary>
    public Vec2 Middle => A.MidpointTo(B);
}
