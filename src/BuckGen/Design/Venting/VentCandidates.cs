using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Settings;

namespace BuckGen.Design.Venting;

/// <summary>Finds where vents would best be on a floor, whatever their spacing.</summary>
internal sealed class VentCandidates
{
    /// <summary>How exactly the narrow places are found, mm.</summary>
    private const double Resolution = 0.02;

    private readonly AirFloor floor;
    private readonly VentSpec spec;
    private readonly double distance;
    private readonly List<VentCandidate> alone = [];
    private readonly VentRow[] rows = [];

    /// <summary>Why a plug-in's pattern failed; none when it did not.</summary>
    public IReadOnlyList<Finding> Failures { get; } = [];

    /// <param name="floor">The floor.</param>
    /// <param name="distance">From the foot of the wall to the centre of a vent, mm.</param>
    /// <param name="spec">The pattern.</param>
    /// <param name="apart">Minimum distance of two vents, mm.</param>
    /// <param name="middle">The middle of the whole outline.</param>
    /// <param name="offsetter">Makes the offsets.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="SpecException">The pattern has too many places.</exception>
    public VentCandidates(AirFloor floor, double distance, VentSpec spec, double apart, Vec2 middle, IOffsetter offsetter,
        CancellationToken cancellation)
    {
        (this.floor, this.distance, this.spec) = (floor, distance, spec);
        if (floor.DeepestPoint is { } deepest)
        {
            alone.Add(new(deepest, VentReason.Counter));
            return;
        }

        var air = new Region([floor.Air]);
        Region Shrunk(double d) => offsetter.Offset(air, -d, CornerJoin.Round, cancellation);
        alone.AddRange(RegionChanges.Find(Shrunk, [0, distance], grows: false, Resolution, cancellation)
            .Select(c =>
                new VentCandidate(c.Place, c.Kind == RegionChangeKind.IslandVanishes ? VentReason.Counter : VentReason.Gap)));
        var inner = Shrunk(distance);
        if (spec.Pattern.AlongWalls) rows = [.. inner.Loops.Select(l => new VentRow(l, apart, middle))];
        else alone.AddRange(inner.Islands.Select(i => new VentCandidate(InsidePoint.Find(i), VentReason.Counter)));
        var (places, failure) = ForeignCode
            .Call(spec.Pattern, () => spec.Pattern.Name,
                () => PatternResult.FindPlaces(spec.Pattern, new(floor.Air, inner), spec));
        if (failure is not null)
        {
            Failures = [failure];
            return;
        }

        if (places.Length > VentPlacing.MaxCandidates) throw VentPlacing.TooMany();
        var room = new RegionInterior(inner);
        alone.AddRange(places.Where(room.Contains).Select(p => new VentCandidate(p, VentReason.Pattern)));
    }

    /// <summary>The wishes of the shape for a spacing, and the given points.</summary>
    /// <param name="spacing">Maximum distance of two vents along a wall, mm.</param>
    public IEnumerable<VentCandidate> At(double spacing)
    {
        if (floor.DeepestPoint is null)
            foreach (var given in spec.Points.Where(floor.Air.Contains)) yield return new(given, VentReason.Given);
        foreach (var wish in alone) yield return wish;
        foreach (var wish in rows.SelectMany(r => r.Candidates(spacing)))
            // The edge of the plate is no wall.
            if (floor.ToWall(wish.Centre, distance + Resolution) <= distance + Resolution) yield return wish;
    }
}
