using BuckGen.Geometry;

namespace BuckGen.Physics.Membranes;

/// <summary>
/// A rigid solid on which the sheet is formed, as a signed distance field. Its coordinates move with it: at the end of forming z
/// = 0 is the clamp frame.
/// </summary>
/// <remarks>
/// The distance is computed from one thread at a time. It is called some hundred thousand times in a run, so it should be fast;
/// it must give the same value for the same point.
/// </remarks>
public interface ITool
{
    /// <summary>
    /// Signed distance to the surface, mm, negative inside the solid. The sign is exact. Outside, the value may be smaller than
    /// the true distance but never larger. It is continuous and zero only on the surface.
    /// </summary>
    /// <param name="point">The point, mm.</param>
    double SignedDistance(Vec3 point);
}
