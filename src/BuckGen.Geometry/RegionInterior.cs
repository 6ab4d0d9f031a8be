namespace BuckGen.Geometry;

/// <summary>Finds for many points which islands of a region hold them; only islands beside a point are checked.</summary>
internal sealed class RegionInterior
{
    // Below this number a loop over all islands is as quick as an index.
    private const int Few = 8;

    private readonly (LoopInterior Outer, LoopInterior[] Holes)[] islands;
    private readonly BoxTree? tree;

    /// <param name="region">The region.</param>
    public RegionInterior(Region region)
    {
        islands = [.. region.Islands
            .Select(i => (new LoopInterior(i.Outer), i.Holes.Select(h => new LoopInterior(h)).ToArray()))];
        if (islands.Length <= Few) return;
        tree = BoxTree.FromItems(region.Islands, i => i.Outer.Bounds);
    }

    /// <summary>The number of the first island that holds a point; -1 for none.</summary>
    public int IslandAt(Vec2 p)
    {
        if (tree is null) return Array.FindIndex(islands, i => Holds(i, p));
        var first = -1;
        foreach (var i in tree.Query(Bounds.FromCorners(p, p)))
            if ((first < 0 || i < first) && Holds(islands[i], p)) first = i;
        return first;
    }

    /// <summary>True when one of the islands holds a point.</summary>
    public bool Contains(Vec2 p) => IslandAt(p) >= 0;

    private static bool Holds((LoopInterior Outer, LoopInterior[] Holes) island, Vec2 p) =>
        island.Outer.Contains(p) && !Array.Exists(island.Holes, h => h.Contains(p));
}
