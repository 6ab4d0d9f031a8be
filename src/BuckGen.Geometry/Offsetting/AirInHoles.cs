using System.Collections.Immutable;

namespace BuckGen.Geometry.Offsetting;

/// <summary>The air in each hole of a region: what the hole encloses less the islands that stand in it.</summary>
internal sealed class AirInHoles
{
    private readonly LoopInterior[] interiors;
    private readonly BoxTree tree;
    private readonly ILookup<int, Island> standing;

    /// <param name="region">The region.</param>
    public AirInHoles(Region region)
    {
        Holes = [.. region.Islands.SelectMany(i => i.Holes)];
        interiors = [.. Holes.Select(h => new LoopInterior(h))];
        tree = BoxTree.FromItems(Holes, h => h.Bounds);
        standing = (Holes.IsEmpty ? [] : region.Islands).ToLookup(i => At(InsidePoint.Find(i)));
    }

    /// <summary>The holes, in the order of the region's islands.</summary>
    public ImmutableArray<Loop> Holes { get; }

    /// <summary>
    /// The number of the hole in whose air, or on whose islands, a point lies: the innermost round it; -1 for none.
    /// </summary>
    public int At(Vec2 p)
    {
        var innermost = -1;
        if (Holes.IsEmpty) return innermost;
        foreach (var i in tree.Query(Bounds.FromCorners(p, p)).Order())
            if ((innermost < 0 || Math.Abs(Holes[i].SignedArea) < Math.Abs(Holes[innermost].SignedArea))
                && interiors[i].Contains(p)) innermost = i;
        return innermost;
    }

    /// <summary>A point of the air in a hole, on none of the islands that stand in it.</summary>
    public Vec2 PointIn(int hole) => standing[hole].Any()
        ? InsidePoint.Find(new Island(Holes[hole], [.. standing[hole].Select(i => i.Outer)]))
        : InsidePoint.Find(Holes[hole]);
}
