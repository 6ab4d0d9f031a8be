namespace BuckGen.Geometry.Offsetting;

/// <summary>What happens to a region as it is offset farther and farther.</summary>
internal enum RegionChangeKind
{
    /// <summary>Two islands grow together.</summary>
    IslandsMerge,

    /// <summary>A hole shrinks to nothing.</summary>
    HoleCloses,

    /// <summary>A bay is closed at its mouth and becomes a hole.</summary>
    BayCloses,

    /// <summary>A hole is divided by its own narrow place.</summary>
    HoleSplits,

    /// <summary>An island shrinks to nothing.</summary>
    IslandVanishes,

    /// <summary>An island is divided by its own neck.</summary>
    NeckPinches,

    /// <summary>The wall between two holes is gone.</summary>
    HolesMerge,

    /// <summary>The wall between a hole and the outside is gone.</summary>
    HoleOpens,
}

/// <summary>One change.</summary>
/// <param name="Kind">What happens.</param>
/// <param name="At">The parameter at which it happens: a distance or a height, mm.</param>
/// <param name="Place">Where it happens.</param>
internal sealed record RegionChange(RegionChangeKind Kind, double At, Vec2 Place)
{
    /// <summary>How far either way the parameter may be off, mm.</summary>
    public double Within { get; init; }
}

/// <summary>Finds where a region that is offset step by step loses, gains, joins or divides its parts.</summary>
internal static class RegionChanges
{
    /// <summary>
    /// Maximum number of lines and arcs made to find the parameters of changes. When they are used up, further changes are known
    /// no better than by the steps; each says how well.
    /// </summary>
    private const int MaxPieces = 1_000_000;

    /// <summary>All changes between the first parameter and the last.</summary>
    /// <param name="at">The region at a parameter; farther on it only grows, or only shrinks.</param>
    /// <param name="steps">Parameters to check first, in order; nothing is searched between two with the same parts.</param>
    /// <param name="grows">True when the region grows along the steps.</param>
    /// <param name="resolution">How exactly the parameter of a change is found, mm.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static List<RegionChange> Find(
        Func<double, Region> at, IReadOnlyList<double> steps, bool grows, double resolution, CancellationToken cancellation)
    {
        var (found, pieces) = (new List<RegionChange>(), 0);
        var before = at(steps[0]);
        for (var i = 0; i + 1 < steps.Count; i++)
        {
            var after = at(steps[i + 1]);
            Search(steps[i], before, steps[i + 1], after);
            before = after;
        }

        return found;

        void Search(double near, Region first, double far, Region last)
        {
            cancellation.ThrowIfCancellationRequested();
            // During the search only the fact of a change matters; its place is computed at the end.
            var changes = Compare(first, last, grows);
            if (!changes.Any()) return;
            if (Math.Abs(far - near) <= resolution || pieces > MaxPieces)
            {
                found.AddRange(changes
                    .Select(c => new RegionChange(c.Kind, (near + far) / 2, c.Place) { Within = Math.Abs(far - near) / 2 }));
                return;
            }

            var middle = (near + far) / 2;
            var between = at(middle);
            pieces += 1 + between.Segments.Count();
            Search(near, first, middle, between);
            Search(middle, between, far, last);
        }
    }

    /// <summary>What differs between an outline and its offset. Growing and shrinking mirror each other.</summary>
    private static IEnumerable<(RegionChangeKind Kind, Vec2 Place)> Compare(Region near, Region far, bool grows)
    {
        var (small, large) = grows ? (near, far) : (far, near);
        var wood = new RegionInterior(large);
        var standing = small.Islands.ToLookup(s => wood.IslandAt(InsidePoint.Find(s)));
        foreach (var (i, island) in large.Islands.Index())
        {
            var inside = standing[i].ToArray();
            if (inside.Length == 0)
                yield return (RegionChangeKind.IslandVanishes, InsidePoint.Midmost(island.Outer, island.Contains));
            if (inside.Length < 2) continue;
            foreach (var joint in Closeness.Joints(inside.Select(o => o.Outer)))
                yield return (grows ? RegionChangeKind.IslandsMerge : RegionChangeKind.NeckPinches, joint);
        }

        // Air is followed as wood is: an island in a hole, with a hole of its own, must not pass for two parts of one hole.
        var (wide, tight) = (new AirInHoles(small), new AirInHoles(large));
        var parts = Enumerable.Range(0, tight.Holes.Length).ToLookup(t => wide.At(tight.PointIn(t)), t => tight.Holes[t]);
        foreach (var (i, hole) in wide.Holes.Index())
        {
            var inside = parts[i].ToArray();
            // Seen from a growing outline a hole without successor has closed; shrinking never makes a hole.
            if (inside.Length == 0 && grows) yield return (RegionChangeKind.HoleCloses, InsidePoint.Midmost(hole, hole.Contains));
            if (inside.Length < 2) continue;
            foreach (var joint in Closeness.Joints(inside))
                yield return (grows ? RegionChangeKind.HoleSplits : RegionChangeKind.HolesMerge, joint);
        }

        // Those that lie in none of the earlier ones.
        foreach (var hole in parts[-1])
        {
            if (grows) yield return (RegionChangeKind.BayCloses, InsidePoint.Midmost(hole, hole.Contains));
            else yield return (RegionChangeKind.HoleOpens, Closeness.Place(hole, large.Islands.Select(i => i.Outer)));
        }
    }
}
