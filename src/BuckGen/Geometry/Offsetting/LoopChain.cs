namespace BuckGen.Geometry.Offsetting;

/// <summary>Chains directed pieces whose ends meet into closed loops.</summary>
internal static class LoopChain
{
    /// <summary>All loops; every piece is used exactly once.</summary>
    /// <exception cref="OffsetFailedException">An end meets no start.</exception>
    public static List<Loop> Close(List<Segment> pieces, double distance)
    {
        var starts = new StartGrid(pieces);
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
                var next = starts.Continuation(pieces[current], first, used);
                if (next < 0)
                    throw new OffsetFailedException(FormattableString.Invariant(
                        $"The offset by {distance} mm does not close at {pieces[current].End}."));
                current = next;
            }
            while (current != first);

            var merged = SegmentMerging.Merge(chain);
            // What is thinner than the joining distance all along is a touch, not an area.
            if (merged.Count >= 2 && Loop.FromSegments(merged) is var loop
                && Math.Abs(loop.SignedArea) > OffsetPrecision.Join * loop.Length) loops.Add(loop);
        }

        return loops;
    }

    /// <summary>Finds pieces by their start point.</summary>
    private sealed class StartGrid
    {
        private const double Cell = 4 * OffsetPrecision.Join;
        private readonly List<Segment> pieces;
        private readonly Dictionary<(long, long), List<int>> cells = [];

        public StartGrid(List<Segment> pieces)
        {
            this.pieces = pieces;
            for (var i = 0; i < pieces.Count; i++)
            {
                var key = Key(pieces[i].Start);
                if (!cells.TryGetValue(key, out var list)) cells[key] = list = [];
                list.Add(i);
            }
        }

        /// <summary>The unused piece that starts where this one ends; of several the one that turns most to the left.</summary>
        /// <remarks>Left is where the material lies, so loops that touch in a point stay apart and never cross.</remarks>
        public int Continuation(Segment piece, int first, bool[] used)
        {
            var (best, bestTurn) = (-1, double.NegativeInfinity);
            var (cx, cy) = Key(piece.End);
            for (var x = cx - 1; x <= cx + 1; x++)
            {
                for (var y = cy - 1; y <= cy + 1; y++)
                {
                    if (!cells.TryGetValue((x, y), out var list)) continue;
                    foreach (var i in list)
                    {
                        if ((used[i] && i != first) || pieces[i].Start.DistanceTo(piece.End) > OffsetPrecision.Join) continue;
                        var turn = piece.DirectionAt(1).AngleTo(pieces[i].DirectionAt(0));
                        if (turn > bestTurn) (best, bestTurn) = (i, turn);
                    }
                }
            }

            return best;
        }

        private static (long X, long Y) Key(Vec2 p) => ((long)Math.Floor(p.X / Cell), (long)Math.Floor(p.Y / Cell));
    }
}
