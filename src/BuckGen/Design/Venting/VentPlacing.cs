using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Design.Venting;

/// <summary>Places the vents of all floors for one spacing.</summary>
/// <remarks>
/// The given points come first, then one vent for each floor. The smallest floor comes first, since another vent behind a thin
/// wall may take its only place. Then follow all other wishes, the most wanted first, and last those that keep the spacing where
/// vents gave way.
/// </remarks>
internal sealed class VentPlacing
{
    /// <summary>Maximum number of places that are tried for vents: many more than a shop drills.</summary>
    public const int MaxCandidates = 50_000;

    private readonly PlacedVents placed;
    private readonly List<Finding> findings = [];

    private VentPlacing(double apart) => placed = new(apart);

    public IReadOnlyList<Vent> Vents => placed.All;

    public IReadOnlyList<Finding> Findings => findings;

    /// <summary>Places the vents.</summary>
    /// <param name="floors">The floors, the smallest first.</param>
    /// <param name="room">Where there is wood for a bore.</param>
    /// <param name="spec">What is wanted.</param>
    /// <param name="diameter">Diameter of the holes at the surface, mm.</param>
    /// <param name="spacing">Maximum distance of two vents along a wall, mm.</param>
    /// <param name="middle">The middle of the whole outline.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="SpecException">There are too many places for vents.</exception>
    public static VentPlacing Create(
        IReadOnlyList<FloorVents> floors, BoreRoom room, VentSpec spec, double diameter, double spacing, Vec2 middle,
        CancellationToken cancellation)
    {
        var placing = new VentPlacing(room.Apart);
        var left = MaxCandidates;
        var turns = floors.Select(f => new Turn(
            f, new(f.Floor, room, spec, diameter, placing.placed), InOrder(Some(f.Candidates(spacing)), middle))).ToArray();
        foreach (var turn in turns)
            while (turn.Waiting.TryPeek(out var wish) && wish.Reason == VentReason.Given) placing.Take(turn, cancellation);
        foreach (var turn in turns)
            while (!turn.HasVent && turn.Waiting.Count > 0) placing.Take(turn, cancellation);
        for (var reason = VentReason.Given; reason <= VentReason.Pattern; reason++)
            foreach (var turn in turns)
                while (turn.Waiting.TryPeek(out var wish) && wish.Reason == reason) placing.Take(turn, cancellation);
        foreach (var turn in turns) placing.findings.AddRange(turn.Vents.Fill(turn.Placement, spacing, cancellation));
        placing.ReportFloorsWithoutVents(turns);
        placing.ReportPointsOffFloors(floors, spec);
        return placing;

        List<VentCandidate> Some(IEnumerable<VentCandidate> wishes)
        {
            List<VentCandidate> some = [.. wishes.Take(left + 1)];
            left -= some.Count;
            return left >= 0 ? some : throw TooMany();
        }
    }

    /// <summary>The refusal of a spacing or pattern that needs more vents than the limit.</summary>
    public static SpecException TooMany() =>
        new(FormattableString.Invariant(
            $"The outline and the spacing need more than {MaxCandidates} places for vents, which is the limit; use a ")
            + "larger spacing, a larger pitch of the grid or fewer points.");

    /// <summary>A floor, its placement and the wishes not yet checked.</summary>
    private sealed record Turn(FloorVents Vents, VentPlacement Placement, Queue<VentCandidate> Waiting)
    {
        public bool HasVent { get; set; }
    }

    /// <summary>
    /// The most wanted first; of equals the sharper corner, then the one farther out, then counter-clockwise from x.
    /// </summary>
    private static Queue<VentCandidate> InOrder(IEnumerable<VentCandidate> wishes, Vec2 middle) => new(wishes
        .OrderBy(w => w.Reason).ThenByDescending(w => Math.Round(w.Turn, 3))
        .ThenByDescending(w => Math.Round(w.Centre.DistanceTo(middle), 2))
        .ThenBy(w => Math.Round(new Vec2(1, 0).AngleTo(w.Centre - middle), 3)));

    private void Take(Turn turn, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var wish = turn.Waiting.Dequeue();
        // A given point is never left out for another: it is placed or reported.
        if (wish.Reason != VentReason.Given && turn.Placement.IsDone(wish)) turn.HasVent = true;
        else if (turn.Placement.TryPlace(wish)) turn.HasVent = true;
        // Along a wall it counts whether the stretch stays too long, which is reported when all are placed.
        else if (wish.Reason != VentReason.Wall) findings.Add(VentFindings.NoRoom(wish, turn.Vents.Floor.Layer));
    }

    private void ReportFloorsWithoutVents(Turn[] turns)
    {
        foreach (var floor in turns.Where(t => !t.HasVent).Select(t => t.Vents.Floor))
            if (!placed.Inside(floor.Air.Outer.Bounds, floor.Layer.Number).Any(v => floor.Air.Contains(v.Centre))
                && !findings.Exists(f => f.Height == floor.Layer.Top && f.Place is { } p && floor.Air.Contains(p)))
                findings.Add(VentFindings.NoRoom(new(InsidePoint.Find(floor.Air), VentReason.Counter), floor.Layer));
    }

    private void ReportPointsOffFloors(IReadOnlyList<FloorVents> floors, VentSpec spec) =>
        findings.AddRange(spec.Points.Where(p => !floors.Any(f => f.Floor.DeepestPoint is null && f.Floor.Air.Contains(p)))
            .Select(VentFindings.NotOnAFloor));
}
