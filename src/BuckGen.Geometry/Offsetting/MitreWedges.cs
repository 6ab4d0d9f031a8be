namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// What mitres add to an offset beyond round corners, by their definition: both sides run on until they meet, or to the limit.
/// </summary>
internal sealed class MitreWedges
{
    private readonly List<(Vec2 Corner, Vec2 First, Vec2 Second, Vec2 Middle)> corners = [];
    private readonly BoxTree tree;
    private readonly double distance, limit;

    /// <param name="source">The region that is offset.</param>
    /// <param name="distance">The distance, mm, with its sign.</param>
    /// <param name="limit">Maximum reach of a mitre, as a multiple of the distance.</param>
    public MitreWedges(Region source, double distance, double limit)
    {
        (this.distance, this.limit) = (Math.Abs(distance), limit);
        // Rungs differ in whether they see the tiny pieces of a corner; either way it may be mitred.
        foreach (var loop in source.Loops.Concat(source.Loops.Select(TinyPieces.Remove)).Distinct())
        {
            for (var i = 0; i < loop.Segments.Length; i++)
            {
                var (before, after) = (loop.Segments[i].DirectionAt(1),
                    loop.Segments[(i + 1) % loop.Segments.Length].DirectionAt(0));
                // At a cusp rounding decides which way it turns.
                if (before.Cross(after) > 0 != distance > 0 && before.Dot(after) > -1 + 1e-12) continue;
                var at = loop.Segments[i].End;
                corners.Add((at, before.Left * -Math.Sign(distance), after.Left * -Math.Sign(distance), (before - after).Unit()));
            }
        }

        tree = BoxTree.FromItems(corners, c => Bounds.FromCorners(c.Corner, c.Corner));
    }

    /// <summary>True when a mitre reaches over a point, or comes within a slack, mm, of it.</summary>
    public bool Cover(Vec2 p, double slack)
    {
        foreach (var i in
            tree.Query(Bounds.FromCorners(p, p).Grown(distance * Math.Sqrt(limit * limit + 1) + slack)))
        {
            var (corner, first, second, middle) = corners[i];
            var (from, turn) = (p - corner, Math.Sign(first.Cross(second)));
            if (from.Dot(first) <= distance + slack && from.Dot(second) <= distance + slack
                && from.Dot(middle) <= Math.Max(limit, 1) * distance + slack
                && first.Cross(from) * turn >= -slack && from.Cross(second) * turn >= -slack) return true;
        }

        return false;
    }
}
