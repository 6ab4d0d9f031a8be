using System.Collections.Immutable;

namespace BuckGen.Geometry;

/// <summary>One connected piece of the plane: an outer loop, counter-clockwise, and the holes in it, clockwise.</summary>
/// <param name="Outer">The outer edge.</param>
/// <param name="Holes">The holes, none of them inside another.</param>
public sealed record Island(Loop Outer, ImmutableArray<Loop> Holes)
{
    /// <summary>Area without the holes, mm².</summary>
    public double Area => Outer.SignedArea + Holes.Sum(h => h.SignedArea);

    /// <summary>The outer edge, then the holes.</summary>
    public IEnumerable<Loop> Loops => Holes.Prepend(Outer);

    /// <summary>True when the point lies in the island and in none of its holes.</summary>
    internal bool Contains(Vec2 p) => Outer.Contains(p) && !Holes.Any(h => h.Contains(p));
}

/// <summary>Islands that lie apart from each other; possibly none. Immutable.</summary>
/// <param name="Islands">The islands.</param>
public sealed record Region(ImmutableArray<Island> Islands)
{
    /// <summary>The region without any island.</summary>
    public static Region Empty { get; } = new([]);

    /// <summary>True when there is no island.</summary>
    public bool IsEmpty => Islands.IsEmpty;

    /// <summary>All loops: each island's outer edge, then its holes.</summary>
    public IEnumerable<Loop> Loops => Islands.SelectMany(i => i.Loops);

    /// <summary>Every line and arc of the boundary; the region lies to the left of each.</summary>
    public IEnumerable<Segment> Segments => Loops.SelectMany(l => l.Segments);

    /// <summary>Area of all islands without their holes, mm².</summary>
    public double Area => Islands.Sum(i => i.Area);

    /// <summary>Length of all edges, mm.</summary>
    public double Perimeter => Loops.Sum(l => l.Length);

    /// <summary>Number of holes in all islands.</summary>
    public int HoleCount => Islands.Sum(i => i.Holes.Length);

    /// <summary>The smallest upright rectangle round all islands.</summary>
    public Bounds Bounds => Islands.Aggregate(Bounds.Nothing, (b, i) => b.With(i.Outer.Bounds));

    /// <summary>True when the point lies in one of the islands.</summary>
    internal bool Contains(Vec2 p) => Islands.Any(i => i.Contains(p));

    /// <summary>Distance from a point to the nearest edge, mm.</summary>
    public double DistanceToEdge(Vec2 p) => Loops.Min(l => l.DistanceTo(p));

    /// <summary>The region moved, turned, scaled evenly or mirrored.</summary>
    public Region Transformed(Affine map)
    {
        ArgumentNullException.ThrowIfNull(map);
        return new([.. Islands.Select(i => new Island(Moved(i.Outer), [.. i.Holes.Select(Moved)]))]);

        // A mirror turns the way round; what is outside stays outside.
        Loop Moved(Loop loop) => map.Mirrors ? loop.Transformed(map).Reversed() : loop.Transformed(map);
    }

    /// <summary>The region that loops enclose by the even-odd rule; which way each loop runs does not matter.</summary>
    /// <param name="loops">Loops that do not cross each other or themselves.</param>
    public static Region FromLoops(IEnumerable<Loop> loops) => Nesting.Resolve(loops);
}
