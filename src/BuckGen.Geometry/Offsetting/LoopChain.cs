namespace BuckGen.Geometry.Offsetting;

/// <summary>Chains directed pieces whose ends meet into closed loops.</summary>
internal static class LoopChain
{
    /// <summary>The loops on the right side of the outline; every piece is used at most once.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="distance">The offset distance, for the message.</param>
    /// <param name="isWanted">
    /// Whether a point is on the right side; without it every side is right. It is evaluated once a chain: no chain changes
    /// sides, since all of it keeps the distance.
    /// </param>
    /// <exception cref="OffsetFailedException">On the right side an end meets no start.</exception>
    public static List<Loop> Close(List<Segment> pieces, double distance, Func<Vec2, bool>? isWanted = null)
    {
        var starts = new EndGrid(pieces.Select(p => p.Start), Precision.Reach(distance));
        var used = new bool[pieces.Count];
        var loops = new List<Loop>();
        for (var first = 0; first < pieces.Count; first++)
        {
            if (used[first]) continue;
            var chain = new List<Segment>();
            var current = first;
            do
            {
                used[current] = true;
                chain.Add(pieces[current]);
                var next = Continuation(pieces, starts, pieces[current], first, used);
                if (next < 0 && IsWanted(chain))
                    throw new OffsetFailedException(FormattableString.Invariant(
                        $"The offset by {distance} mm does not close at {pieces[current].End}."));
                current = next;
            }
            while (current >= 0 && current != first);

            if (current < 0 || !IsWanted(chain)) continue;
            var merged = SegmentMerging.Merge(chain);
            // What is thinner than the joining distance all along is a touch, not an area.
            if (merged.Count >= 2 && Loop.FromSegments(merged) is var loop
                && Math.Abs(loop.SignedArea) > Precision.Join * loop.Length) loops.Add(loop);
        }

        return loops;

        bool IsWanted(List<Segment> chain) => isWanted is null || isWanted(chain[0].PointAt(0.5));
    }

    /// <summary>
    /// The unused piece that starts where this one ends; of several the one that turns most to the left. If none starts just
    /// there, the nearest within reach.
    /// </summary>
    /// <remarks>Left is where the material lies, so loops that touch in a point stay apart and never cross.</remarks>
    private static int Continuation(List<Segment> pieces, EndGrid starts, Segment piece, int first, bool[] used)
    {
        var (best, bestTurn, bestDistance) = (-1, double.NegativeInfinity, double.PositiveInfinity);
        foreach (var (i, apart) in starts.Near(piece.End))
        {
            if (used[i] && i != first) continue;
            var distance = Math.Max(apart, Precision.Join);
            if (distance > bestDistance) continue;
            var turn = piece.DirectionAt(1).AngleTo(pieces[i].DirectionAt(0));
            if (distance < bestDistance || turn > bestTurn) (best, bestTurn, bestDistance) = (i, turn, distance);
        }

        return best;
    }
}
