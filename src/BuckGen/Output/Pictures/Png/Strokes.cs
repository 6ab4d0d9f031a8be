using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Output.Pictures.Png;

/// <summary>
/// A drawn line as areas: a bar for every straight piece, a disc at every bend. All turn the same way, so together they are one
/// area.
/// </summary>
internal static class Strokes
{
    /// <summary>A bend of less than this, as the sine, leaves no gap worth a disc.</summary>
    private const double Bend = 0.3;

    /// <summary>The areas.</summary>
    /// <param name="points">The corners of the line.</param>
    /// <param name="closed">True when the last leads to the first.</param>
    /// <param name="width">Width of the line.</param>
    /// <param name="dashes">Lengths of dashes and gaps; empty for an unbroken line.</param>
    public static IEnumerable<Vec2[]> ToAreas(IReadOnlyList<Vec2> points, bool closed, double width,
        ImmutableArray<double> dashes)
    {
        IReadOnlyList<Vec2> line = closed ? [.. points, points[0]] : points;
        if (!dashes.IsEmpty) return Dashed(line, dashes).SelectMany(d => ToAreas(d, false, width, []));
        return Whole([.. line.Where((p, i) => i == 0 || p != line[i - 1])], closed, width);
    }

    private static IEnumerable<Vec2[]> Whole(Vec2[] line, bool closed, double width)
    {
        for (var i = 1; i < line.Length; i++)
        {
            var along = (line[i] - line[i - 1]).Unit();
            var aside = along.Left * (width / 2);
            yield return [line[i - 1] + aside, line[i] + aside, line[i] - aside, line[i - 1] - aside];
            if (i == line.Length - 1 && !closed) continue;
            var next = (line[i == line.Length - 1 ? 1 : i + 1] - line[i]).Unit();
            if (Math.Abs(along.X * next.Y - along.Y * next.X) > Bend || along.X * next.X + along.Y * next.Y < 0)
                yield return Disc(line[i], width / 2);
        }
    }

    private static Vec2[] Disc(Vec2 centre, double radius) =>
        [.. Enumerable.Range(0, 12).Select(i => centre + new Vec2(radius, 0).Turned(-i * Math.PI / 6))];

    private static IEnumerable<Vec2[]> Dashed(IReadOnlyList<Vec2> line, ImmutableArray<double> dashes)
    {
        var (dash, left, drawn) = (0, dashes[0], new List<Vec2> { line[0] });
        for (var i = 1; i < line.Count; i++)
        {
            var (from, length) = (line[i - 1], line[i - 1].DistanceTo(line[i]));
            if (length == 0) continue;
            var (along, done) = ((line[i] - from) * (1 / length), 0.0);
            while (length - done > left)
            {
                done += left;
                drawn.Add(from + along * done);
                if (dash % 2 == 0) yield return [.. drawn];
                drawn = [drawn[^1]];
                // An odd number of lengths runs on with dashes and gaps in each other's place, as in SVG.
                left = dashes[++dash % dashes.Length];
            }

            left -= length - done;
            drawn.Add(line[i]);
        }

        if (dash % 2 == 0 && drawn.Count > 1) yield return [.. drawn];
    }
}
