using System.Collections.Immutable;

namespace BuckGen.Geometry;

/// <summary>
/// Corners at which a loop runs a hair too far and crosses itself, as a path does that stops short of its start and is then
/// closed.
/// </summary>
internal static class CrossedCorners
{
    /// <summary>Maximum number of pieces that are checked beyond a corner.</summary>
    private const int MaxPieces = 64;

    /// <summary>
    /// The pieces of a loop cut at such crossings, with the stretches behind them left out; the pieces themselves if there are
    /// none.
    /// </summary>
    /// <param name="loop">The pieces of a closed loop, in order.</param>
    /// <param name="maxLength">Maximum length of a stretch, mm, that is left out.</param>
    /// <param name="coincident">Distance, mm, below which two points are one: a loop that only touches itself there is left
    /// alone.</param>
    public static ImmutableArray<Segment> CutOff(ImmutableArray<Segment> loop, double maxLength, double coincident)
    {
        var pieces = loop;
        for (var i = 0; i < pieces.Length; i++)
            while (CutAfter(pieces, i, maxLength, coincident) is { } cut)
            {
                // A stretch across the start of the loop takes the pieces between off its front as well as off its end.
                var atEnd = Math.Min(pieces.Length - cut.Length, pieces.Length - 1 - i);
                (i, pieces) = (i - (pieces.Length - cut.Length - atEnd), cut);
            }

        return pieces;
    }

    /// <summary>
    /// The pieces without the short stretch on which the loop comes back to one of them; null when it does not.
    /// </summary>
    private static ImmutableArray<Segment>? CutAfter(ImmutableArray<Segment> pieces, int first, double maxLength,
        double coincident)
    {
        Span<Vec2> points = stackalloc Vec2[2];
        var (before, between) = (pieces[first], 0.0);
        for (var step = 1; step < Math.Min(MaxPieces, pieces.Length) && between <= maxLength; step++)
        {
            var after = pieces[(first + step) % pieces.Length];
            var count = SegmentIntersection.Find(before, after, 0, points);
            for (var k = 0; k < count; k++)
            {
                var stretch = points[k].DistanceTo(before.End) + between + points[k].DistanceTo(after.Start);
                if (stretch <= maxLength && stretch > 2 * coincident
                    && Cut(pieces, first, step, points[k], coincident) is { } cut) return cut;
            }

            between += after.Length;
        }

        return null;
    }

    private static ImmutableArray<Segment>? Cut(ImmutableArray<Segment> pieces, int first, int step, Vec2 place,
        double coincident)
    {
        var (before, after) = (pieces[first], pieces[(first + step) % pieces.Length]);
        var kept = before.Part(0, before.NearestParameter(place)) with { End = place };
        var next = after.Part(after.NearestParameter(place), 1) with { Start = place };
        // Where nothing is left of a piece, the loop does not cross itself but starts or ends there.
        if (kept.Length <= coincident || next.Length <= coincident) return null;
        return
        [
            .. pieces.Select((piece, i) => (Piece: piece, Beyond: (i - first + pieces.Length) % pieces.Length))
                .Where(p => p.Beyond == 0 || p.Beyond >= step)
                .Select(p => p.Beyond == 0 ? kept : p.Beyond == step ? next : p.Piece),
        ];
    }
}
