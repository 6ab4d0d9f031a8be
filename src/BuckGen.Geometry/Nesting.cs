namespace BuckGen.Geometry;

/// <summary>Sorts loops into islands and holes by how deep each lies inside the others.</summary>
internal static class Nesting
{
    // Below this number, checking every pair of loops is as quick as building an index.
    private const int Few = 32;

    // Twice the usual error of a fit, mm: so near an edge a point may lie on its wrong side.
    private const double Touching = 0.02;

    /// <summary>Loops at even depth are outer edges, loops at odd depth are holes of the loop round them.</summary>
    public static Region Resolve(IEnumerable<Loop> loops, CancellationToken cancellation = default)
    {
        // A loop can only lie inside a larger one, so after sorting the parents come first.
        var sorted = loops.Where(l => l.SignedArea != 0).OrderByDescending(l => Math.Abs(l.SignedArea)).ToArray();
        var interiors = sorted.Select(l => new LoopInterior(l)).ToArray();
        var larger = LargerNear(sorted);
        var parents = new int[sorted.Length];
        var depths = new int[sorted.Length];
        for (var i = 0; i < sorted.Length; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            // The smallest of the loops round it is the one it lies in.
            parents[i] = larger(i).Where(j => Encloses(sorted[j], interiors[j], sorted[i])).DefaultIfEmpty(-1).First();
            if (parents[i] >= 0) depths[i] = depths[parents[i]] + 1;
        }

        var holes = Enumerable.Range(0, sorted.Length).Where(i => depths[i] % 2 != 0)
            .ToLookup(i => parents[i], i => Directed(sorted[i], false));
        return new([.. Enumerable.Range(0, sorted.Length).Where(i => depths[i] % 2 == 0)
            .Select(i => new Island(Directed(sorted[i], true), [.. holes[i]]))]);
    }

    /// <summary>For the number of a loop those of the larger ones whose bounds meet its own, the smallest first.</summary>
    private static Func<int, IEnumerable<int>> LargerNear(Loop[] sorted)
    {
        if (sorted.Length <= Few) return i => Enumerable.Range(0, i).Reverse();
        var tree = BoxTree.FromItems(sorted, l => l.Bounds);
        return i => tree.Query(sorted[i].Bounds).Where(j => j < i).OrderDescending();
    }

    /// <summary>True when one loop lies inside another.</summary>
    public static bool Encloses(Loop outer, Loop inner) => Encloses(outer, new(outer), inner);

    /// <summary>The same with what is known of the outer loop from earlier questions.</summary>
    /// <remarks>
    /// Loops that do not cross lie on one side of each other, so one point clear of the other's edge decides. A loop that runs
    /// along the other everywhere has none; then a point well inside it decides, for the other can't pass through there.
    /// </remarks>
    private static bool Encloses(Loop outer, LoopInterior interior, Loop inner)
    {
        if (!outer.Bounds.Intersects(inner.Bounds)) return false;
        foreach (var p in Probes(inner))
            if (!interior.IsNear(p, Touching)) return interior.Contains(p);
        return interior.Contains(InsidePoint.Find(inner));
    }

    /// <summary>Points of a loop, those spread over it first.</summary>
    private static IEnumerable<Vec2> Probes(Loop loop)
    {
        var segments = loop.Segments;
        foreach (var third in new[] { 0, segments.Length / 3, 2 * segments.Length / 3 })
            yield return segments[third].PointAt(0.5);
        foreach (var segment in segments)
        {
            yield return segment.Start;
            yield return segment.PointAt(0.5);
        }
    }

    private static Loop Directed(Loop loop, bool counterClockwise) =>
        loop.IsCounterClockwise == counterClockwise ? loop : loop.Reversed();
}
