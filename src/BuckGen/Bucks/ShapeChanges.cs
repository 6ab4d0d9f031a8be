using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Bucks;

/// <summary>What happens to an outline as it is offset farther and farther.</summary>
internal enum ShapeChangeKind
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

/// <summary>One change with its height above the bottom of the stack, mm, and its place.</summary>
internal sealed record ShapeChange(ShapeChangeKind Kind, double Height, Vec2 Place);

/// <summary>Finds the heights at which a drafted outline loses, gains, joins or divides its parts.</summary>
internal static class ShapeChanges
{
    /// <summary>Heights are found to this length, mm.</summary>
    public const double Resolution = 0.02;

    /// <summary>All changes between the plane of the drawn outline and the other end of the walls.</summary>
    /// <param name="shape">The drafted outline.</param>
    /// <param name="heights">Heights to look at first; between two that look alike nothing is searched.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static List<ShapeChange> Find(DraftedShape shape, IEnumerable<double> heights, CancellationToken cancellation)
    {
        var found = new List<ShapeChange>();
        var ordered = heights.Distinct().OrderBy(h => Math.Abs(h - shape.ReferenceHeight)).ToArray();
        for (var i = 0; i + 1 < ordered.Length; i++) Search(shape, ordered[i], ordered[i + 1], found, cancellation);
        return found;
    }

    private static void Search(DraftedShape shape, double near, double far, List<ShapeChange> found, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var changes = Compare(shape.At(near), shape.At(far), shape.OffsetAt(far) > 0).ToList();
        if (changes.Count == 0) return;
        if (Math.Abs(far - near) <= Resolution)
        {
            found.AddRange(changes.Select(c => new ShapeChange(c.Kind, (near + far) / 2, c.Place)));
            return;
        }

        var middle = (near + far) / 2;
        Search(shape, near, middle, found, cancellation);
        Search(shape, middle, far, found, cancellation);
    }

    /// <summary>What differs between an outline and its offset. Growing and shrinking mirror each other.</summary>
    private static IEnumerable<(ShapeChangeKind Kind, Vec2 Place)> Compare(Region near, Region far, bool grows)
    {
        var (small, large) = grows ? (near, far) : (far, near);
        foreach (var island in large.Islands)
        {
            var inside = small.Islands.Where(s => island.Contains(InsidePoint.Of(s))).ToArray();
            if (inside.Length == 0) yield return (ShapeChangeKind.IslandVanishes, island.Outer.Bounds.Centre);
            for (var i = 1; i < inside.Length; i++)
                yield return (grows ? ShapeChangeKind.IslandsMerge : ShapeChangeKind.NeckPinches,
                    Closeness.Place(inside[i].Outer, inside.Take(i).Select(o => o.Outer)));
        }

        var (wide, tight) = (small.Islands.SelectMany(i => i.Holes).ToArray(), large.Islands.SelectMany(i => i.Holes).ToArray());
        foreach (var hole in wide)
        {
            var inside = tight.Where(t => hole.Contains(InsidePoint.Of(t))).ToArray();
            // Seen from a growing outline a hole without successor has closed; shrinking never makes a hole.
            if (inside.Length == 0 && grows) yield return (ShapeChangeKind.HoleCloses, hole.Bounds.Centre);
            for (var i = 1; i < inside.Length; i++)
                yield return (grows ? ShapeChangeKind.HoleSplits : ShapeChangeKind.HolesMerge,
                    Closeness.Place(inside[i], inside.Take(i)));
        }

        foreach (var hole in tight)
        {
            if (wide.Any(w => w.Contains(InsidePoint.Of(hole)))) continue;
            if (grows) yield return (ShapeChangeKind.BayCloses, hole.Bounds.Centre);
            else yield return (ShapeChangeKind.HoleOpens, Closeness.Place(hole, large.Islands.Select(i => i.Outer)));
        }
    }
}
