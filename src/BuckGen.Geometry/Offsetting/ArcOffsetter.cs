namespace BuckGen.Geometry.Offsetting;

/// <summary>The exact offset: lines stay lines, arcs stay concentric arcs, a circle stays a circle.</summary>
/// <remarks>
/// Every line and arc is moved aside and corners are joined. Then the parts that lie nearer than the distance to any piece of the
/// outline are cut from each moved piece. What is left is the offset, and its parts are chained into loops. A chain on the wrong
/// side of the outline, in the air when wood shrinks or in the wood when it grows, bounds nothing and is left out. Nothing is
/// approximated; ends that must meet do so to 0.00001 mm. When they do not, the offset is refused rather than repaired. A
/// distance below 0.000001 mm changes nothing.
/// </remarks>
/// <param name="moved">To which side the pieces of the outline are moved.</param>
internal sealed class ArcOffsetter(MovedSides moved = MovedSides.Drawn) : IOffsetter
{
    /// <summary>How far along the outline, in pieces, neighbours are tried before the index is searched.</summary>
    private const int MaxNeighbourSteps = 100;

    /// <inheritdoc/>
    public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(region);
        ArgumentNullException.ThrowIfNull(join);
        cancellation.ThrowIfCancellationRequested();
        if (Math.Abs(distance) < Precision.MinPieceLength || region.IsEmpty) return region;
        // Work near the origin, where doubles are finest.
        var toOrigin = Affine.Translation(-region.Bounds.Centre);
        var back = Affine.Translation(region.Bounds.Centre);
        var centred = region.Transformed(toOrigin);
        var inside = new RegionInterior(centred);
        var parts = KeptParts(RawOffset.Create(centred, distance, join, moved), cancellation);
        // On the far side of the outline no material changes: a long mitre may come out there, and walls of no width leave their
        // sides there.
        parts.RemoveAll(p => (p.IsMitre || moved == MovedSides.Both) && inside.Contains(p.Segment.PointAt(0.5)) == distance > 0);
        var edges = LooseEnds
            .Prune([.. CoincidentPieces.Resolve(parts, cancellation).Select(p => p.Segment)], Precision.Reach(distance));
        var loops = LoopChain.Close(edges, distance, p => inside.Contains(p) == distance < 0);
        return Oriented(loops, distance).Transformed(back);
    }

    private static List<RawPiece> KeptParts(RawOffset raw, CancellationToken cancellation)
    {
        var index = BoxTree.Over(raw.Zones, z => z.Bounds);
        var kept = new List<RawPiece>();
        var open = new OpenIntervals();
        foreach (var piece in raw.Pieces)
        {
            cancellation.ThrowIfCancellationRequested();
            open.Reset();
            var carrier = new Carrier(piece.Segment);
            RemoveNeighbours(open, carrier, piece, raw.Zones);
            if (open.IsEmpty) continue;
            foreach (var zone in index.Query(piece.Segment.Bounds))
            {
                // A piece keeps the distance from what it was moved from; only rounding could suggest otherwise.
                if (zone == piece.Zone) continue;
                open.Remove(carrier, raw.Zones[zone]);
                if (open.IsEmpty) break;
            }

            foreach (var (from, to) in open.Intervals)
            {
                var part = from == 0 && to == 1 ? piece.Segment : piece.Segment.Part(from, to);
                if (part.Length > Precision.MinPieceLength) kept.Add(piece with { Segment = part });
            }
        }

        return kept;
    }

    /// <summary>
    /// The pieces drawn just before and after cut most of it: on a jagged outline this saves index searches.
    /// </summary>
    private static void RemoveNeighbours(OpenIntervals open, in Carrier carrier, RawPiece piece, List<ForbiddenZone> zones)
    {
        for (var step = 1; step <= MaxNeighbourSteps && !open.IsEmpty; step += 1 + step / 2)
        {
            if (piece.Zone + step < zones.Count) open.Remove(carrier, zones[piece.Zone + step]);
            if (piece.Zone >= step) open.Remove(carrier, zones[piece.Zone - step]);
        }
    }

    private static Region Oriented(List<Loop> loops, double distance)
    {
        var region = Region.FromLoops(loops);
        // The pieces carry the material on their left; nesting must agree, or a loop has been lost or crossed.
        var outer = loops.Count(l => l.IsCounterClockwise);
        if (outer != region.Islands.Length)
            throw new OffsetFailedException(
                $"The offset by {distance} mm has {outer} loops that run as outer edges but {region.Islands.Length} islands.");
        return region;
    }
}
