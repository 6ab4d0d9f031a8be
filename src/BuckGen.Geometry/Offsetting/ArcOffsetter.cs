using System.Runtime.CompilerServices;

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
    // Many heights are offset from one outline; each is prepared once, and forgotten with its region.
    private readonly ConditionalWeakTable<Region, OffsetOutline> outlines = [], tidied = [];

    /// <inheritdoc/>
    public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(region);
        ArgumentNullException.ThrowIfNull(join);
        cancellation.ThrowIfCancellationRequested();
        if (Math.Abs(distance) < Precision.MinPieceLength || region.IsEmpty) return region;
        var outline = join.Corners == Corners.Mitre
            ? tidied.GetValue(region, r => new(r, withoutTinyPieces: true))
            : outlines.GetValue(region, r => new(r, withoutTinyPieces: false));
        var parts = KeptParts.Find(RawOffset.Create(outline, distance, join, moved), cancellation);
        // On the far side of the outline no material changes: a long mitre may come out there, and walls of no width leave their
        // sides there.
        parts.RemoveAll(p =>
            (p.IsMitre || moved == MovedSides.Both) && outline.Inside.Contains(p.Segment.PointAt(0.5)) == distance > 0);
        var edges = LooseEnds
            .Prune([.. CoincidentPieces.Resolve(parts, cancellation).Select(p => p.Segment)], Precision.Reach(distance));
        var loops = LoopChain.Close(edges, distance, p => outline.Inside.Contains(p) == distance < 0);
        return Oriented([.. loops.Select(l => l.Transformed(Affine.Translation(outline.Centre)))], distance);
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
