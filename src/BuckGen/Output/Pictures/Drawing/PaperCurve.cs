using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Output.Pictures.Drawing;

/// <summary>What of a path an eye can see on paper: fewer, longer lines where many short ones make a curve.</summary>
internal static class PaperCurve
{
    /// <summary>How far, mm on paper, what is shown may lie from the path.</summary>
    public const double MaxDeviation = 0.01;

    // Of fewer pieces than this so little could be left out that none is.
    private const int Few = 8;

    /// <summary>
    /// The path with corners left out that lie no farther than <see cref="MaxDeviation"/> from the line past them. Every corner
    /// kept is one of its own, and arcs that can be seen stay arcs.
    /// </summary>
    public static PicturePath Shown(PicturePath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var segments = path.Segments;
        if (segments.Length < Few) return path;
        var shown = ImmutableArray.CreateBuilder<Segment>();
        for (var i = 0; i < segments.Length;)
        {
            if (IsArcToSee(segments[i]))
            {
                shown.Add(segments[i++]);
                continue;
            }

            var end = EndOfLine(segments, i);
            shown.Add(end == i + 1 && !segments[i].IsArc ? segments[i] : new(segments[i].Start, segments[end - 1].End));
            i = end;
        }

        return shown.Count == segments.Length ? path : path with { Segments = shown.ToImmutable() };
    }

    private static bool IsArcToSee(Segment segment) => segment.IsArc && segment.Sagitta > MaxDeviation / 2;

    /// <summary>The number after the last piece that one straight line from the start of the first can stand for.</summary>
    /// <remarks>
    /// A line may pass a corner on either side of a circle round it. The directions in which it does so for all corners so far
    /// are bounded by two of them, and the line must end within them.
    /// </remarks>
    private static int EndOfLine(ImmutableArray<Segment> segments, int first)
    {
        // Arcs too flat to see take the other half.
        const double Radius = MaxDeviation / 2;
        var (start, farthest, isOpen) = (segments[first].Start, 0.0, true);
        var (right, left) = (default(Vec2), default(Vec2));
        var end = first + 1;
        for (var i = first; i < segments.Length && !IsArcToSee(segments[i]); i++)
        {
            var to = segments[i].End - start;
            var length = to.Length;
            // Back towards the start the line would no longer pass the corner that lies farthest.
            if (length < farthest) break;
            farthest = length;
            if (!isOpen && (right.Cross(to) < 0 || to.Cross(left) < 0)) break;
            end = i + 1;
            if (length <= Radius) continue;
            var (sin, cos) = (Radius / length, Math.Sqrt(1 - Radius * Radius / (length * length)));
            var onRight = new Vec2(to.X * cos + to.Y * sin, to.Y * cos - to.X * sin);
            var onLeft = new Vec2(to.X * cos - to.Y * sin, to.Y * cos + to.X * sin);
            if (isOpen || right.Cross(onRight) > 0) right = onRight;
            if (isOpen || onLeft.Cross(left) > 0) left = onLeft;
            isOpen = false;
        }

        return end;
    }
}
