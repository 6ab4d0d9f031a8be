using System.Collections.Immutable;

namespace BuckGen.Geometry;

/// <summary>Sorts loops into islands and holes by how deep each lies inside the others.</summary>
internal static class Nesting
{
    /// <summary>Loops at even depth are outer edges, loops at odd depth are holes of the loop round them.</summary>
    public static Region Resolve(IEnumerable<Loop> loops)
    {
        // A loop can only lie inside a larger one, so after sorting the parents come first.
        var sorted = loops.Where(l => l.SignedArea != 0).OrderByDescending(l => Math.Abs(l.SignedArea)).ToArray();
        var parents = new int[sorted.Length];
        var depths = new int[sorted.Length];
        for (var i = 0; i < sorted.Length; i++)
        {
            parents[i] = -1;
            for (var j = i - 1; j >= 0 && parents[i] < 0; j--)
                if (Encloses(sorted[j], sorted[i])) (parents[i], depths[i]) = (j, depths[j] + 1);
        }

        var islands = ImmutableArray.CreateBuilder<Island>();
        for (var i = 0; i < sorted.Length; i++)
        {
            if (depths[i] % 2 != 0) continue;
            var holes = Enumerable.Range(0, sorted.Length).Where(h => parents[h] == i && depths[h] % 2 != 0);
            islands.Add(new(Directed(sorted[i], true), [.. holes.Select(h => Directed(sorted[h], false))]));
        }

        return new(islands.ToImmutable());
    }

    /// <summary>True when one loop lies inside another; loops that touch are judged by most of their pieces.</summary>
    public static bool Encloses(Loop outer, Loop inner)
    {
        if (!outer.Bounds.Contains(inner.Bounds.Centre) && !outer.Bounds.Meets(inner.Bounds)) return false;
        var segments = inner.Segments;
        ReadOnlySpan<int> probes = [0, segments.Length / 3, 2 * segments.Length / 3];
        var inside = 0;
        foreach (var probe in probes)
            if (outer.Contains(segments[probe].PointAt(0.5))) inside++;
        return inside >= 2;
    }

    private static Loop Directed(Loop loop, bool counterClockwise) =>
        loop.IsCounterClockwise == counterClockwise ? loop : loop.Reversed();
}
