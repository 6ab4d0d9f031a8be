using BuckGen.Geometry;

namespace BuckGen.Intake.Measuring;

/// <summary>A corner of the edge; joints that turn by less than 1° are smooth and no corners.</summary>
/// <param name="Angle">The angle between its two sides, degrees, 0 to 179: measured in the region or, at an inside corner,
/// outside it.</param>
/// <param name="IsInside">True for a corner that goes into the region, which a round bit cannot cut out; false for one that
/// sticks out.</param>
/// <param name="Place">Where it is.</param>
internal sealed record EdgeCorner(double Angle, bool IsInside, Vec2 Place);
