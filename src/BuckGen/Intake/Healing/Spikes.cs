using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Intake.Healing;

/// <summary>Stretches of a loop that run out and straight back again.</summary>
internal static class Spikes
{
    /// <summary>The pieces of a loop without its spikes; empty when nothing else is left.</summary>
    public static ImmutableArray<Segment> Trim(ImmutableArray<Segment> loop, Tolerance tolerance)
    {
        var kept = new List<Segment>(loop.Length);
        foreach (var segment in loop) Append(kept, segment, tolerance);
        // The seam of the loop can hide a spike as well: take pieces off the front and put them behind.
        while (kept.Count > 1 && Folds(kept[^1], kept[0], tolerance))
        {
            var first = kept[0];
            kept.RemoveAt(0);
            Append(kept, first, tolerance);
        }

        return [.. kept];
    }

    private static void Append(List<Segment> kept, Segment next, Tolerance tolerance)
    {
        while (true)
        {
            if (kept.Count == 0 || !Folds(kept[^1], next, tolerance))
            {
                kept.Add(next);
                return;
            }

            var last = kept[^1];
            kept.RemoveAt(kept.Count - 1);
            if (tolerance.AreCoincident(last.Start, next.End)) return;
            next = new(last.Start, next.End);
        }
    }

    /// <summary>True when the second piece runs back over the first.</summary>
    private static bool Folds(Segment first, Segment second, Tolerance tolerance)
    {
        if (first.IsArc || second.IsArc)
            return tolerance.AreCoincident(first.Start, second.End)
                && tolerance.AreCoincident(first.PointAt(0.5), second.PointAt(0.5));
        if (first.Chord.Dot(second.Chord) >= 0) return false;
        var (longer, tip) = first.Chord.LengthSquared >= second.Chord.LengthSquared
            ? (first, second.End)
            : (second.Reversed(), first.Start);
        return Math.Abs(longer.Chord.Unit().Cross(tip - longer.Start)) <= tolerance.Coincident;
    }
}
