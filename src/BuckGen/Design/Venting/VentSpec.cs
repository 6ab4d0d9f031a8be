using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics;
using BuckGen.Physics.Air;
using BuckGen.Settings;

namespace BuckGen.Design.Venting;

/// <summary>How air leaves from under the sheet. Lengths in mm.</summary>
public sealed record VentSpec
{
    /// <summary>Where vents go.</summary>
    public IVentPattern Pattern { get; init; } = VentPatterns.Walls;

    /// <summary>Farthest two vents lie apart along a wall. 25 mm along corner lines is common practice (no source).</summary>
    public double Spacing { get; init; } = VentSettings.Spacing.Value;

    /// <summary>
    /// Pitch of the grid, for <see cref="VentPatterns.Grid"/>. 50 to 75 mm on broad flats is common practice (no source).
    /// </summary>
    public double GridPitch { get; init; } = VentSettings.GridPitch.Value;

    /// <summary>From the foot of the wall to the edge of the hole.</summary>
    public double WallDistance { get; init; } = VentSettings.WallDistance.Value;

    /// <summary>
    /// Diameter of the hole at the surface; null to compute it: the widest drill that is no wider than the formed
    /// sheet is thick on average.
    /// </summary>
    public double? Diameter { get; init; }

    /// <summary>The drills the shop buys: a computed diameter is rounded down to one of them.</summary>
    public Drills Drills { get; init; } = VentSettings.Drills.Default;

    /// <summary>
    /// Narrowest hole that a shop drills in wood by hand, 0.2 to 10; below it a finding offers other ways to let the air out.
    /// 0.8 is common practice (no source).
    /// </summary>
    public double MinDrill { get; init; } = VentSettings.MinDrill.Value;

    /// <summary>Diameter of the relief bores below the surface layer. 3 to 6 mm is common practice (no source).</summary>
    public double BoreDiameter { get; init; } = VentSettings.Bore.Value;

    /// <summary>
    /// Thickness left above a relief bore that is drilled from below into the surface layer. 3 to 6 mm is common practice (no
    /// source).
    /// </summary>
    public double FaceThickness { get; init; } = VentSettings.FaceThickness.Value;

    /// <summary>Least wood between a bore and an edge, a dowel or another bore.</summary>
    public double Land { get; init; } = VentSettings.Land.Value;

    /// <summary>What draws the air out, and how fast it should go.</summary>
    public AirFlowSpec Air { get; init; } = new();

    /// <summary>Further places for vents, in the design's coordinates.</summary>
    public ImmutableArray<Vec2> Points { get; init; } = [];

    /// <summary>Areas without vents.</summary>
    public ImmutableArray<Bounds> KeepOut { get; init; } = [];

    internal void Validate(BasePlate? plate)
    {
        if (plate is null) throw new SpecException("Vents need a base plate to open on; add a base.");
        VentSettings.Spacing.Require(Spacing);
        VentSettings.GridPitch.Require(GridPitch);
        VentSettings.WallDistance.Require(WallDistance);
        VentSettings.Diameter.Require(Diameter);
        VentSettings.MinDrill.Require(MinDrill);
        VentSettings.Bore.Require(BoreDiameter);
        VentSettings.FaceThickness.Require(FaceThickness);
        if (Points.Any(p => !p.IsFinite)) throw new SpecException("The place of a vent must be two numbers.");
        if (KeepOut.Any(k => !k.LowerLeft.IsFinite || !new Vec2(k.MaxX, k.MaxY).IsFinite))
            throw new SpecException("The corners of an area without vents must be numbers.");
        VentSettings.Pump.Require(Air.PumpDisplacement);
        VentSettings.Tank.Require(Air.ReservoirVolume);
        VentSettings.Seconds.Require(Air.WantedTime);
        try
        {
            Air.Validate();
        }
        catch (ArgumentOutOfRangeException outOfRange)
        {
            throw new SpecException(Bound.MessageOf(outOfRange));
        }

        VentSettings.Land.Require(Land);
    }
}
