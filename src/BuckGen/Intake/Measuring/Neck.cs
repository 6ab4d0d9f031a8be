using BuckGen.Geometry;

namespace BuckGen.Intake.Measuring;

/// <summary>
/// A place where two edges face each other across the region: square to the way across, with no other edge in the circle whose
/// diameter it is.
/// </summary>
/// <remarks>
/// Also the thickness of a bar and the diameter of a disc are such places. The tip of a wedge is not such a place, be it sharp,
/// rounded or cut off. Edges within 0.1° of parallel face each other; joints of less than 15° count as part of a curve; edges
/// nearer than 0.00001 mm touch and are not measured.
/// </remarks>
/// <param name="A">One end of the way across.</param>
/// <param name="B">The other end.</param>
internal sealed record Neck(Vec2 A, Vec2 B)
{
    /// <summary>How wide it is, mm.</summary>
    public double Width => A.DistanceTo(B);

    /// <summary>Its middle.</summary>
    public Vec2 Middle => A.MidpointTo(B);
}
