using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Judging;

/// <summary>Where a shape is checked.</summary>
internal static class Probes
{
    private const int MaxProbes = 64, Rings = 4, Round = 180;

    /// <summary>Edges of every loop, spread along it, the shortest loops included.</summary>
    public static IEnumerable<Edge> EdgesOf(Shape shape)
    {
        var loops = shape.Loops.Count <= MaxProbes ? shape.Loops : [.. Spread(shape.Loops, MaxProbes)];
        var each = Math.Max(2, MaxProbes / Math.Max(1, loops.Count));
        return loops.SelectMany(l => Spread(l, each));
    }

    /// <summary>Points beside those edges, on both sides.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="moved">How far beyond the edge, to the right of its travel, the points are centred, mm.</param>
    /// <param name="aside">How far from there they lie on either side, mm.</param>
    public static IEnumerable<Vec2> Beside(Shape shape, double moved, double aside) => EdgesOf(shape).SelectMany(e =>
    {
        var right = new Vec2(e.Along.Y, -e.Along.X);
        return new[] { e.Middle + right * (moved - aside), e.Middle + right * (moved + aside) };
    });

    /// <summary>A grid, off the round numbers on which edges lie and in no step with them.</summary>
    public static IEnumerable<Vec2> Over(Bounds box, int across = 10) =>
        from i in Enumerable.Range(0, across)
        from j in Enumerable.Range(0, across)
        select new Vec2(box.MinX + box.Width * (i + 0.437) / (across - 0.1),
            box.MinY + box.Height * (j + 0.411) / (across - 0.2));

    /// <summary>
    /// A disc: its middle and rings, so close that between two points the edge bends by less than 0.0002 of the radius.
    /// </summary>
    public static IEnumerable<Vec2> Disc(Vec2 centre, double radius) =>
        from ring in Enumerable.Range(0, Rings + 1)
        from i in Enumerable.Range(0, ring == 0 ? 1 : Round)
        let angle = 2 * Math.PI * i / Round
        select centre + new Vec2(Math.Cos(angle), Math.Sin(angle)) * (radius * ring / Rings);

    private static IEnumerable<T> Spread<T>(IReadOnlyList<T> items, int max) =>
        items.Count <= max ? items : Enumerable.Range(0, max).Select(i => items[(int)((long)i * items.Count / max)]);
}
