namespace BuckGen.Geometry.Offsetting;

/// <summary>Takes out of a loop what is too small to be drawn on purpose, so that no mitre is made over it.</summary>
/// <remarks>
/// A mitre stretches a corner to several times the distance, however short the pieces are that make it: a spike of a micrometre
/// would grow a horn of wood. Round corners follow such pieces without harm and are left to them.
/// </remarks>
internal static class TinyPieces
{
    /// <summary>
    /// A run of pieces within this of one point, mm, is a corner; a piece that runs back this near to the last one is no edge. It
    /// is a quarter of the usual chord error.
    /// </summary>
    public const double MaxSize = 2.5e-3;

    /// <summary>Maximum number of pieces in a run that comes back to its first point.</summary>
    private const int MaxRunLength = 6;

    /// <summary>
    /// The loop without runs of tiny pieces and without slivers; the loop itself if there are none, or if nothing else is left.
    /// </summary>
    public static Loop Remove(Loop loop)
    {
        var pieces = CrossedCorners.CutOff(loop.Segments, 2 * MaxSize, Precision.MinPieceLength).ToList();
        while (Collapse(pieces) || Unfold(pieces)) continue;
        return pieces.Count == loop.Segments.Length || pieces.Count < 2 ? loop : Loop.FromSegments(pieces);
    }

    /// <summary>Makes one corner of the first run whose last point comes back within reach of its first.</summary>
    private static bool Collapse(List<Segment> pieces)
    {
        for (var i = 0; i < pieces.Count; i++)
        {
            for (var run = Math.Min(MaxRunLength, pieces.Count - 2); run > 0; run--)
            {
                if (!IsTiny(pieces, i, run)) continue;
                var (before, after) = ((i + pieces.Count - 1) % pieces.Count, (i + run) % pieces.Count);
                pieces[after] = pieces[after] with { Start = pieces[before].End };
                RemoveRun(pieces, i, run);
                return true;
            }
        }

        return false;
    }

    private static bool IsTiny(List<Segment> pieces, int first, int run)
    {
        var corner = pieces[first].Start;
        for (var k = 0; k < run; k++)
        {
            var piece = pieces[(first + k) % pieces.Count];
            if (piece.End.DistanceTo(corner) > MaxSize || piece.PointAt(0.5).DistanceTo(corner) > MaxSize) return false;
        }

        return true;
    }

    private static void RemoveRun(List<Segment> pieces, int first, int run)
    {
        var atEnd = Math.Min(run, pieces.Count - first);
        pieces.RemoveRange(first, atEnd);
        pieces.RemoveRange(0, run - atEnd);
    }

    /// <summary>Takes out a sliver: a piece that runs back over the one before or after, where others run over both.</summary>
    private static bool Unfold(List<Segment> pieces)
    {
        for (var i = 0; i < pieces.Count && pieces.Count > 3; i++)
        {
            var (first, back, last) = (i, (i + 1) % pieces.Count, (i + 2) % pieces.Count);
            // A slit or a needle stays: without it the outline would lose the place it reaches.
            if (Folds(pieces[first], pieces[back]) && IsReached(pieces, pieces[back].Start, first, back)
                && Shortened(pieces[first].Reversed(), pieces[back]) is { } before) pieces[first] = before.Reversed();
            else if (Folds(pieces[back], pieces[last]) && IsReached(pieces, pieces[back].End, back, last)
                && Shortened(pieces[last], pieces[back].Reversed()) is { } after) pieces[last] = after;
            else continue;
            pieces.RemoveAt(back);
            return true;
        }

        return false;
    }

    private static bool IsReached(List<Segment> pieces, Vec2 tip, int one, int two) =>
        Enumerable.Range(0, pieces.Count).Any(i => i != one && i != two && pieces[i].DistanceTo(tip) <= MaxSize);

    private static bool Folds(Segment piece, Segment next) => piece.DirectionAt(1).Dot(next.DirectionAt(0)) < -0.9;

    /// <summary>
    /// The longer piece from where the shorter one, which starts with it, leaves it; null when the shorter one goes elsewhere.
    /// </summary>
    private static Segment? Shortened(Segment longer, Segment shorter)
    {
        if (longer.DistanceTo(shorter.End) > MaxSize || longer.DistanceTo(shorter.PointAt(0.5)) > MaxSize) return null;
        return longer.Part(longer.NearestParameter(shorter.End), 1) with { Start = shorter.End };
    }
}
