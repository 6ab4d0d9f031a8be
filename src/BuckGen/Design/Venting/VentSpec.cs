using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
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
    public double Spacing { get; init; } = 25;

    /// <summary>
    /// Pitch of the grid, for <see cref="VentPatterns.Grid"/>. 50 to 75 mm on broad flats is common practice (no source).
    /// </summary>
    public double GridPitch { get; init; } = 50;

    /// <summary>From the foot of the wall to the edge of the hole.</summary>
    public double WallDistance { get; init; } = 0.5;

    /// <summary>
    /// Diameter of the hole at the surface; null to compute it: no wider than the formed sheet is thick on average.
    /// </summary>
    public double? Diameter { get; init; }

    /// <summary>Diameter of the relief bores below the surface layer. 3 to 6 mm is common practice (no source).</summary>
    public double BoreDiameter { get; init; } = 5;

    /// <summary>
    /// Thickness left above a relief bore that is drilled from below into the surface layer. 3 to 6 mm is common practice (no
    /// source).
    /// </summary>
    public double FaceThickness { get; init; } = 3;

    /// <summary>Least wood between a bore and an edge, a dowel or another bore.</summary>
    public double Land { get; init; } = 2;

    /// <summary>What draws the air out, and how fast it should go.</summary>
    public AirFlowSpec Air { get; init; } = new();

    /// <summary>Further places for vents, in the design's coordinates.</summary>
    public ImmutableArray<Vec2> Points { get; init; } = [];

    /// <summary>Areas without vents.</summary>
    public ImmutableArray<Bounds> KeepOut { get; init; } = [];

    internal void Validate(BasePlate? plate)
    {
        if (plate is null) throw new SpecException("Vents need a base plate to open on; add a base.");
        SpecRange.Require(Spacing is >= 5 and <= 500, "spacing of vents", Spacing, " mm", "from 5 to 500 mm");
        SpecRange.Require(GridPitch is >= 5 and <= 500, "pitch of the vent grid", GridPitch, " mm", "from 5 to 500 mm");
        SpecRange.Require(WallDistance is >= 0 and <= 20, "distance of vents from the wall", WallDistance, " mm", "from 0 to 20 mm");
        if (Diameter is { } d) SpecRange.Require(d is >= 0.2 and <= 10, "diameter of vents", d, " mm", "from 0.2 to 10 mm");
        SpecRange.Require(BoreDiameter is >= 1 and <= 30, "diameter of relief bores", BoreDiameter, " mm", "from 1 to 30 mm");
        SpecRange.Require(FaceThickness is >= 0.5 and <= 50, "thickness left over a relief bore", FaceThickness, " mm", "from 0.5 to 50 mm");
        foreach (var point in Points)
            SpecRange.Require(point.IsFinite, "place of a vent", double.NaN, " mm", "two numbers");
        foreach (var area in KeepOut)
            SpecRange.Require(area.LowerLeft.IsFinite && new Vec2(area.MaxX, area.MaxY).IsFinite, "edge of an area without vents", double.NaN, " mm", "a number");
        try
        {
            Air.Validate();
        }
        catch (ArgumentOutOfRangeException outOfRange)
        {
            throw new SpecException(Bound.MessageOf(outOfRange));
        }

        SpecRange.Require(Land is >= 0.5 and <= 50, "land round bores", Land, " mm", "from 0.5 to 50 mm");
    }
}
