namespace BuckGen.Geometry.Offsetting;

/// <summary>The parts of a raw offset that keep the distance from the whole outline.</summary>
internal static class KeptParts
{
    /// <summary>How far along the outline, in pieces, neighbours are tried before the tree is searched.</summary>
    private const int MaxNeighbourSteps = 100;

    /// <summary>What is left of each piece, in their order.</summary>
    public static List<RawPiece> Find(RawOffset raw, CancellationToken cancellation)
    {
        var kept = new List<RawPiece>(raw.Pieces.Count);
        var wedges = BoxTree.FromItems(raw.Wedges, w => w.Bounds);
        var open = new OpenIntervals();
        foreach (var piece in raw.Pieces)
        {
            cancellation.ThrowIfCancellationRequested();
            open.Reset();
            RemoveFrom(open, piece, raw, wedges);
            foreach (var (from, to) in open.Intervals)
            {
                var part = from == 0 && to == 1 ? piece.Segment : piece.Segment.Part(from, to);
                if (part.Length > Precision.MinPieceLength) kept.Add(piece with { Segment = part });
            }
        }

        return kept;
    }

    private static void RemoveFrom(OpenIntervals open, RawPiece piece, RawOffset raw, BoxTree wedges)
    {
        // Most pieces of a smooth outline meet no zone; only those that do need more than their bounds.
        Carrier? carrier = null;
        var behind = Behind.FromPiece(piece, raw.Outline.Carriers[piece.Zone]);
        RemoveNeighbours(open, ref carrier, behind, piece, raw);
        var bounds = piece.Segment.Bounds;
        var reach = bounds.Grown(raw.Distance);
        var walk = new BoxTree.Walk(raw.Outline.Tree);
        while (!walk.IsDone && !open.IsEmpty)
        {
            if (!walk.Box.Intersects(reach) || behind.Holds(walk.Box)) walk.Pass();
            else if (!walk.IsItem) walk.Enter();
            else
            {
                RemoveNear(open, ref carrier, behind, piece, raw, walk.Item);
                walk.Pass();
            }
        }

        foreach (var wedge in wedges.Query(bounds)) open.Remove(carrier ??= new(piece.Segment), raw.Wedges[wedge]);
    }

    private static void RemoveNear(
        OpenIntervals open, ref Carrier? carrier, in Behind behind, RawPiece piece, RawOffset raw, int number)
    {
        // A piece keeps the distance from what it was moved from; only rounding could suggest otherwise.
        if (number == piece.Zone || behind.Holds(raw.Outline.Carriers[number])) return;
        open.Remove(carrier ??= new(piece.Segment), raw.ZoneOf(number));
    }

    /// <summary>
    /// The pieces drawn just before and after cut most of it: on a jagged outline this saves searches.
    /// </summary>
    private static void RemoveNeighbours(
        OpenIntervals open, ref Carrier? carrier, in Behind behind, RawPiece piece, RawOffset raw)
    {
        for (var step = 1; step <= MaxNeighbourSteps && !open.IsEmpty; step += 1 + step / 2)
        {
            if (piece.Zone + step < raw.Outline.Carriers.Length)
                RemoveNear(open, ref carrier, behind, piece, raw, piece.Zone + step);
            if (piece.Zone >= step) RemoveNear(open, ref carrier, behind, piece, raw, piece.Zone - step);
        }
    }
}
