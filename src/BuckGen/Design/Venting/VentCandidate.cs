using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>A wished place for a vent, and the way along which it may give way to something that is in its place.</summary>
/// <param name="Centre">Where it would be best.</param>
/// <param name="Reason">Why.</param>
/// <param name="Way">The place a way along its row, mm; null when it stands alone.</param>
/// <param name="Along">How far along the row it lies, mm.</param>
/// <param name="Turn">How sharp the corner is, radians; 0 for no corner.</param>
internal sealed record VentCandidate(Vec2 Centre, VentReason Reason, Func<double, Vec2>? Way = null, double Along = 0,
    double Turn = 0);
