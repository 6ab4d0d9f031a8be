namespace BuckGen.Geometry;

/// <summary>
/// Finds a point well inside a shape: one that lies inside any larger shape too, even where both share an edge.
/// </summary>
internal static class InsidePoint
{
    private const int Halvings = 40;

    /// <summary>A point inside a loop, whichever way it runs.</summary>
    public static Vec2 Find(Loop loop) => Beside(loop, loop.Contains);

    /// <summary>A point in the island and in none of its holes.</summary>
    public static Vec2 Find(Island island) => Beside(island.Outer, island.Contains);

    /// <summary>The middle of a loop's edge where it lies inside, else a point well inside; it turns with the shape.</summary>
    /// <param name="loop">The loop.</param>
    /// <param name="isInside">What counts as inside.</param>
    public static Vec2 Midmost(Loop loop, Func<Vec2, bool> isInside) =>
        EdgeCentroid.Compute([loop]) is var middle && isInside(middle) ? middle : Beside(loop, isInside);

    /// <summary>Beside the middle of the longest piece, as far from it as stays inside.</summary>
    private static Vec2 Beside(Loop loop, Func<Vec2, bool> isInside)
    {
        var longest = loop.Segments.MaxBy(s => s.Chord.LengthSquared);
        var inward = longest.DirectionAt(0.5).Left * (loop.IsCounterClockwise ? 1 : -1);
        var distance = longest.Chord.Length / 2;
        for (var i = 0; i < Halvings; i++, distance /= 2)
            if (longest.PointAt(0.5) + inward * distance is var p && isInside(p)) return p;
        return longest.PointAt(0.5);
    }
}
