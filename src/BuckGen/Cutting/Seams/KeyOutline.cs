using BuckGen.Geometry;

namespace BuckGen.Cutting.Seams;

/// <summary>
/// The outline of one key, a dovetail with rounded corners, along an upright seam: it stands to the right of the seam.
/// </summary>
internal static class KeyOutline
{
    /// <summary>Neck and depth of a key over the width of its head: a slope of 1 in 4 (common practice, no source).</summary>
    private const double Neck = 0.7, Depth = 0.6, Slope = (1 - Neck) / 2 / Depth;

    /// <summary>Radius of corners where no bit asks for more, mm: a sharp inside corner starts a crack.</summary>
    private const double MinRadius = 1;

    /// <summary>An inside corner is rounder than the bit by this factor, so that the bit turns in it.</summary>
    private const double RounderThanBit = 1.05;

    /// <summary>Minimum width of a key over the diameter of the bit: its rounded corners then leave straight flanks.</summary>
    public const double WidthsOfBit = 3;

    /// <summary>How far a key reaches beyond the seam, mm.</summary>
    public static double DepthOf(double head) => head * Depth;

    /// <summary>The line round a key, upward.</summary>
    /// <param name="at">Where the seam stands, x.</param>
    /// <param name="centre">Middle of the key, y.</param>
    /// <param name="spec">The size of keys.</param>
    /// <param name="play">How far it lies outside the key itself, mm: 0 for the key, the play for its socket.</param>
    public static IEnumerable<Segment> Line(double at, double centre, SeamSpec spec, double play)
    {
        var (neck, depth, radius) = (spec.Key * Neck / 2, DepthOf(spec.Key), RadiusOf(spec));
        // The flank moved outward by the play meets the seam further out.
        var foot = neck + play * Math.Sqrt(1 + Slope * Slope);
        var (far, wide) = (at + depth + play, foot + (depth + play) * Slope);
        (Vec2 Corner, double Radius)[] corners =
        [
            (new(at, centre - foot), Math.Max(0, radius - play)), (new(far, centre - wide), radius + play),
            (new(far, centre + wide), radius + play), (new(at, centre + foot), Math.Max(0, radius - play)),
        ];
        // Beyond the first and the last corner the line runs on along the seam.
        var half = HalfSpan(spec);
        Vec2[] points = [new(at, centre - half), .. corners.Select(c => c.Corner), new(at, centre + half)];
        var from = points[0];
        for (var i = 0; i < corners.Length; i++)
        {
            var (start, end, bulge) = Rounded(points[i], points[i + 1], points[i + 2], corners[i].Radius);
            yield return new(from, start);
            if (bulge != 0) yield return new(start, end, bulge);
            from = end;
        }

        yield return new(from, points[^1]);
    }

    /// <summary>Half of what a key takes of the seam, its rounded corners and the play included, mm.</summary>
    public static double HalfSpan(SeamSpec spec)
    {
        // The corner between seam and flank turns by a right angle and the lean of the flank.
        var corner = Math.Tan((Math.PI / 2 + Math.Atan(Slope)) / 2) * RadiusOf(spec);
        return Math.Max(spec.Key / 2, spec.Key * Neck / 2 + corner) + 2 * spec.Clearance;
    }

    private static double RadiusOf(SeamSpec spec) => Math.Max(MinRadius, spec.Bit / 2 * RounderThanBit);

    private static (Vec2 Start, Vec2 End, double Bulge) Rounded(Vec2 before, Vec2 corner, Vec2 after, double radius)
    {
        if (radius == 0) return (corner, corner, 0);
        var (into, outOf) = ((corner - before).Unit(), (after - corner).Unit());
        var turn = Math.Atan2(into.Cross(outOf), into.Dot(outOf));
        var reach = radius * Math.Tan(Math.Abs(turn) / 2);
        return (corner - into * reach, corner + outOf * reach, Math.Tan(turn / 4));
    }
}
