using BuckGen.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Venting;

/// <summary>A wished place for a vent, and the way along which it may give way to something that is in its place.</summary>
/// <param name="Centre">Where it would be best.</param>
/// <param name="Reason">Why.</param>
/// <param name="Row">The row it belongs to; null when it stands alone.</param>
/// <param name="Along">How far along the row it lies, mm.</param>
internal sealed record VentWish(Vec2 Centre, VentReason Reason, VentRow? Row = null, double Along = 0);

/// <summary>Works out where vents would best be on a floor.</summary>
internal static class VentWishes
{
    /// <summary>How exactly the narrow places are found, mm.</summary>
    private const double Resolution = 0.02;

    /// <summary>The wishes for a floor, the most wanted first.</summary>
    /// <param name="floor">The floor.</param>
    /// <param name="distance">From the foot of the wall to the centre of a vent, mm.</param>
    /// <param name="spec">Pattern and spacing.</param>
    /// <param name="spacing">Farthest two vents lie apart along a wall, mm.</param>
    /// <param name="offsetter">Makes the offsets.</param>
    public static IEnumerable<VentWish> Of(AirFloor floor, double distance, VentSpec spec, double spacing, IOffsetter offsetter)
    {
        var air = new Region([floor.Air]);
        Region Shrunk(double d) => offsetter.Offset(air, -d, CornerJoin.Round);
        var changes = RegionChanges.Find(Shrunk, [0, distance], grows: false, Resolution, CancellationToken.None);
        foreach (var change in changes)
        {
            if (change.Kind == RegionChangeKind.IslandVanishes) yield return new(change.Place, VentReason.Counter);
            else yield return new(change.Place, VentReason.Gap);
        }

        var rows = Shrunk(distance);
        if (spec.Pattern == VentPattern.Walls)
        {
            var walls = new SegmentIndex(floor.Walls.Segments);
            foreach (var wish in rows.Loops.SelectMany(l => new VentRow(l).Wishes(spacing)))
                // The edge of the plate is no wall.
                if (walls.DistanceWithin(wish.Centre, distance + Resolution) <= distance + Resolution) yield return wish;
        }
        else
        {
            foreach (var room in rows.Islands) yield return new(InsidePoint.Of(room), VentReason.Counter);
        }

        if (spec.Pattern == VentPattern.Grid)
            foreach (var p in Grid(floor.Air.Outer.Bounds, spec.GridPitch).Where(rows.Contains)) yield return new(p, VentReason.Grid);
    }

    /// <summary>A square grid centred on a rectangle.</summary>
    private static IEnumerable<Vec2> Grid(Bounds b, double pitch)
    {
        var (columns, rows) = ((int)(b.Width / pitch), (int)(b.Height / pitch));
        for (var j = 0; j <= rows; j++)
            for (var i = 0; i <= columns; i++)
                yield return b.Centre + new Vec2((i - columns / 2.0) * pitch, (j - rows / 2.0) * pitch);
    }
}
