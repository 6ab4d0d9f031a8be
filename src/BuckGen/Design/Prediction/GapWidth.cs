using BuckGen.Geometry;

namespace BuckGen.Design.Prediction;

/// <summary>
/// How wide the gap is into which the sheet is drawn: a counter of a letter, a space between two pieces, a cavity.
/// </summary>
/// <param name="wood">Distance from the outline of the part.</param>
/// <param name="isMale">True when the air lies outside the outline.</param>
internal sealed class GapWidth(PlanDistance wood, bool isMale)
{
    /// <summary>Step of the differences by which the direction of the nearest wall is found, mm.</summary>
    private const double Step = 1e-3;

    /// <summary>A point as far inside the wood still lies on its wall, mm.</summary>
    private const double Touching = 0.05;

    /// <summary>Relative error allowed in the width.</summary>
    private const double Accuracy = 0.05;

    /// <summary>Share of its radius by which a circle must keep from other walls: on a polygon each touches two edges.</summary>
    private const double Free = 0.98;

    /// <summary>
    /// In a corner circles get small as well, and is no gap: a circle that moves by its radius gets there larger by this much. It
    /// grows by the sine of half the angle, so corners of 35 degrees and more are recognised.
    /// </summary>
    private const double CornerGrowth = 1.3;

    /// <summary>Share of half its width from which on a point lies in the middle of a gap.</summary>
    private const double MiddleShare = 0.7;

    private const int Directions = 16, MaxMoves = 40;

    /// <summary>
    /// Width at a point, mm: the diameter of the largest circle in the air that touches the wall where it is nearest to the
    /// point. In a corner it is that of the circle outside the corner. It is infinite on the wood, and where the width is over
    /// the limit.
    /// </summary>
    /// <param name="p">The point in plan.</param>
    /// <param name="max">Limit, mm.</param>
    public double At(Vec2 p, double max)
    {
        var distance = AirAt(p);
        if (distance < -Touching || 2 * distance >= max) return double.PositiveInfinity;
        var slope = new Vec2(
            AirAt(p + new Vec2(Step, 0)) - AirAt(p - new Vec2(Step, 0)),
            AirAt(p + new Vec2(0, Step)) - AirAt(p - new Vec2(0, Step))) * (0.5 / Step);
        // Half-way between two walls the nearest is neither.
        if (slope.Length < 0.5) return distance > 0 ? OutOfCorner(p, distance, max) : double.PositiveInfinity;
        var away = slope * (1 / slope.Length);
        var foot = p - away * distance;
        if (IsFree(max / 2)) return double.PositiveInfinity;
        var (free, taken) = (Math.Max(distance, Step), max / 2);
        while (taken - free > Accuracy * free)
        {
            var middle = (free + taken) / 2;
            if (IsFree(middle)) free = middle;
            else taken = middle;
        }

        return OutOfCorner(foot + away * free, free, max);

        bool IsFree(double radius) => AirAt(foot + away * radius) >= Free * radius;
    }

    /// <summary>True near the middle of a gap, as far from its walls as most of half its width.</summary>
    /// <param name="p">The point in plan.</param>
    /// <param name="max">Width from which it counts as open, mm.</param>
    public bool IsInMiddle(Vec2 p, double max) =>
        At(p, max) is var width && !double.IsInfinity(width) && AirAt(p) >= MiddleShare * width / 2;

    /// <summary>The narrowest gap along an outline; null when none is narrower than the limit.</summary>
    /// <param name="edge">The outline whose distance the widths are made of.</param>
    /// <param name="max">Limit, mm.</param>
    public NarrowGap? Narrowest(Region edge, double max)
    {
        NarrowGap? narrowest = null;
        foreach (var segment in edge.Segments)
        {
            var place = segment.PointAt(0.5);
            if (At(place, narrowest?.Width ?? max) is var width && !double.IsInfinity(width)) narrowest = new(place, width, max);
        }

        return narrowest;
    }

    private double OutOfCorner(Vec2 centre, double radius, double max)
    {
        for (var moves = 0; moves < MaxMoves && 2 * radius < max; moves++)
        {
            var (from, before) = (centre, radius);
            for (var i = 0; i < Directions; i++)
            {
                var there = from + new Vec2(before, 0).Turned(i * 2 * Math.PI / Directions);
                if (AirAt(there) is var air && air > radius) (centre, radius) = (there, air);
            }

            if (radius < CornerGrowth * before) return 2 * before;
        }

        return 2 * radius < max ? 2 * radius : double.PositiveInfinity;
    }

    private double AirAt(Vec2 p) => isMale ? wood.At(p) : -wood.At(p);
}

/// <summary>A gap that is too narrow for the triangles of the sheet.</summary>
/// <param name="Place">Where it is narrowest, at its wall.</param>
/// <param name="Width">Width, mm.</param>
/// <param name="MinJudged">Width from which gaps are judged, mm.</param>
public sealed record NarrowGap(Vec2 Place, double Width, double MinJudged);
