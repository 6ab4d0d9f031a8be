using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Makes one edge of the crossing loops of a shape that is filled wherever its loops wind round a point.</summary>
/// <remarks>
/// Letters joined in a script and shapes merged by hand are drawn so. The loops are split where they meet; a piece is an edge
/// of the shape when just one side of it is filled. Under the even-odd rule crossings have no such clear meaning (every overlap
/// would be a hole), so there they stay and are refused.
/// </remarks>
internal static class OverlapUniting
{
    /// <summary>Shapes of more pieces are refused: each piece is compared with all others.</summary>
    private const int MaxPieces = 5000;

    /// <summary>The loops with every crossing nonzero shape made one; the rest as they were.</summary>
    public static Healed<ImmutableArray<SourcedLoop>> Unite(
        ImmutableArray<SourcedLoop> loops, ImmutableArray<Crossing> crossings, Tolerance tolerance,
        CancellationToken cancellation)
    {
        // Where the search was ended there may be very many more, and each would make further pieces.
        if (crossings.Length >= CrossingSearch.MaxCrossings) return new(loops, []);
        var result = loops;
        var (places, first) = (new List<Vec2>(), "");
        foreach (var shape in crossings.Where(c => IsOneShape(loops[c.LoopA].Path, loops[c.LoopB].Path))
            .GroupBy(c => loops[c.LoopA].Path.Shape))
        {
            var path = loops[shape.First().LoopA].Path;
            ImmutableArray<Loop> drawn = [.. loops.Where(l => IsOneShape(l.Path, path)).Select(l => l.Loop)];
            if (Edges(drawn, tolerance, cancellation) is not { } edges) continue;
            result = [.. result.Where(l => !IsOneShape(l.Path, path)), .. edges.Select(e => new SourcedLoop(e, path))];
            if (places.Count == 0) first = path.Source;
            places.AddRange(shape.Select(c => c.Place));
        }

        return new(result, places.Count == 0 ? [] : [new("overlap-united", places.Count, 0, [.. places],
            $"{CountText.Format(places.Count, "crossing")} inside filled shapes {CountText.WasOrWere(places.Count)} "
            + $"resolved: overlapping parts were made one, as the nonzero fill rule requires, the first in {first}.")]);
    }

    private static bool IsOneShape(DrawnPath a, DrawnPath b) =>
        a.Shape == b.Shape && a.FillRule == FillRule.NonZero && b.FillRule == FillRule.NonZero;

    /// <summary>The edges of the filled area; null when they can't be distinguished.</summary>
    private static List<Loop>? Edges(ImmutableArray<Loop> loops, Tolerance tolerance, CancellationToken cancellation)
    {
        if (loops.Sum(l => l.Segments.Length) > MaxPieces) return null;
        var edges = new List<Segment>();
        var known = new PointGrid(tolerance.Coincident);
        ImmutableArray<LoopInterior> interiors = [.. loops.Select(l => new LoopInterior(l))];
        foreach (var piece in LoopSplitting.Split(loops, tolerance))
        {
            cancellation.ThrowIfCancellationRequested();
            var aside = piece.DirectionAt(0.5).Left * (4 * tolerance.Coincident);
            var middle = piece.PointAt(0.5);
            var (left, right) = (IsFilled(middle + aside), IsFilled(middle - aside));
            // Where loops run along each other the same edge comes up again.
            if (left == right || known.Near(middle).Any()) continue;
            known.Add(middle, edges.Count);
            edges.Add(left ? piece : piece.Reversed());
        }

        try
        {
            return LoopChain.Close(edges, 0);
        }
        catch (OffsetFailedException)
        {
            // Loops that run along each other within the tolerance; the crossings are refused then.
            return null;
        }

        bool IsFilled(Vec2 p) => interiors.Sum(l => l.WindingAround(p)) != 0;
    }
}
