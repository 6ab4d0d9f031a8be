namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>
/// What an offset with round corners is, by its definition: all points nearer to the material than the distance, or, when
/// shrinking, all points of the material farther than the distance from its edge. It knows nothing of how offsets are made.
/// </summary>
internal static class DistanceOracle
{
    /// <summary>
    /// The first point of a grid over both regions that the offset has on the wrong side; null when there is none.
    /// </summary>
    /// <param name="source">The region that was offset.</param>
    /// <param name="result">The offset.</param>
    /// <param name="distance">The distance, mm.</param>
    /// <param name="uncertain">Points this near to the offset edge, mm, are not judged.</param>
    /// <param name="across">Points of the grid in each direction.</param>
    public static string? Disagreement(Region source, Region result, double distance, double uncertain, int across = 48)
    {
        var bounds = source.Bounds.Grown(Math.Max(0, distance) + 1);
        for (var i = 0; i <= across; i++)
        {
            for (var j = 0; j <= across; j++)
            {
                // Off the round numbers on which edges lie, and in no step with them.
                var p = new Vec2(
                    bounds.MinX + bounds.Width * (i + 0.137) / (across + 0.3),
                    bounds.MinY + bounds.Height * (j + 0.411) / (across + 0.7));
                var (inside, away) = (source.Contains(p), source.DistanceToEdge(p));
                var depth = (inside ? away : -away) + distance;
                if (Math.Abs(depth) > uncertain && result.Contains(p) != depth > 0)
                    return FormattableString.Invariant(
                        $"{p} is {(depth > 0 ? "missing from" : "wrongly in")} the offset by {distance} mm ({depth:F4} mm deep)");
            }
        }

        return null;
    }

    /// <summary>The largest difference between the distance and where points of the result's edge really lie, mm.</summary>
    public static double WorstEdge(Region source, Region result, double distance)
    {
        var worst = 0.0;
        foreach (var segment in result.Segments)
            for (var i = 0; i < 9; i++)
                worst = Math.Max(worst, Math.Abs(source.DistanceToEdge(segment.PointAt(i / 9.0)) - Math.Abs(distance)));
        return worst;
    }
}
