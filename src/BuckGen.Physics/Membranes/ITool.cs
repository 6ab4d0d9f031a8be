using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// A rigid solid that the sheet is formed on, in coordinates that go with it: z = 0 is where the clamp frame stands at the end.
/// </summary>
internal interface ITool
{
    /// <summary>
    /// Distance to the surface, mm, negative inside the solid. The sign is exact; outside, the value may be less than the true
    /// distance but never more. It is continuous and nothing only at the surface.
    /// </summary>
    double SignedDistance(Vec3 point);
}
