using BuckGen.Geometry;

namespace BuckGen.Intake.Measuring;

/// <summary>An arc of the edge.</summary>
/// <param name="Radius">Its radius, mm.</param>
/// <param name="Centre">Its centre.</param>
/// <param name="Place">The middle of the arc.</param>
internal sealed record RoundEdge(double Radius, Vec2 Centre, Vec2 Place);
