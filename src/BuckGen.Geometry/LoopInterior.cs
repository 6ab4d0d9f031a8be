namespace BuckGen.Geometry;

/// <summary>
/// Decides for many points whether a loop holds them; of a long loop only the pieces beside a point are checked.
/// </summary>
internal sealed class LoopInterior(Loop loop)
{
    // Below this a walk along the whole loop is as quick.
    private const int Few = 64;
    private BoxTree? tree;

    /// <summary>How often the loop winds round a point, as <see cref="Loop.WindingAround"/> counts it.</summary>
    public int WindingAround(Vec2 p)
    {
        if (loop.Segments.Length <= Few || !loop.Bounds.Contains(p)) return loop.WindingAround(p);
        // The tree is built for the first point: most loops never need it.
        tree ??= Build();
        var winding = 0;
        foreach (var i in tree.Query(new(p.X, p.Y, loop.Bounds.MaxX, p.Y)))
            winding += Loop.WindingOf(loop.Segments[i], p);
        return winding;
    }

    /// <summary>True when the point lies inside the loop.</summary>
    public bool Contains(Vec2 p) => WindingAround(p) != 0;

    /// <summary>True when the point lies on the loop or within a reach, mm, of it.</summary>
    public bool IsNear(Vec2 p, double reach)
    {
        if (!loop.Bounds.Grown(reach).Contains(p)) return false;
        if (loop.Segments.Length <= Few) return loop.DistanceTo(p) <= reach;
        tree ??= Build();
        foreach (var i in tree.Query(Bounds.FromCorners(p, p).Grown(reach)))
            if (loop.Segments[i].DistanceTo(p) <= reach) return true;
        return false;
    }

    private BoxTree Build() => BoxTree.FromItems(loop.Segments, s => s.Bounds);
}
