using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Makes one edge of loops that cross where the drawing shows one area: letters joined in a script, shapes merged by
/// hand.</summary>
/// <remarks>
/// The loops are split where they meet; a piece is an edge of the area when just one side of it is filled. A shape's own fill
/// rule decides what it fills. Lines that cross have no such clear meaning; there the crossings stay and are refused, unless
/// uniting is asked for.
/// </remarks>
internal static class OverlapUniting
{
    /// <summary>Areas of more pieces are refused: each piece is compared with all others.</summary>
    private const int MaxPieces = 10_000;

    /// <summary>The loops with every area of crossing shapes made one; the rest as they were.</summary>
    /// <param name="loops">The loops.</param>
    /// <param name="meetings">Where they cross or touch.</param>
    /// <param name="asked">True when all that overlaps is to be united.</param>
    /// <param name="tolerance">The tolerances.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static Healed<ImmutableArray<SourcedLoop>> Unite(ImmutableArray<SourcedLoop> loops, CrossingSearch.Findings meetings,
        bool asked, Tolerance tolerance, CancellationToken cancellation)
    {
        // Where the search was ended there may be very many more, and each would make further pieces.
        if (meetings.Crossings.Length >= CrossingSearch.MaxCrossings) return new(loops, []);
        var groups = new OneArea(loops, meetings, asked).Groups();
        var result = loops;
        var (inside, between) = (new List<Crossing>(), new List<Crossing>());
        foreach (var group in groups)
        {
            ImmutableArray<SourcedLoop> drawn = [.. loops.Where(l => group.Shapes.Contains(l.Path.Shape))];
            if (Edges(drawn, tolerance, cancellation) is not { } edges) continue;
            var path = drawn[0].Path;
            result = [.. result.Where(l => !group.Shapes.Contains(l.Path.Shape)), .. edges.Select(e => new SourcedLoop(e, path))];
            (group.Shapes.Count == 1 ? inside : between).AddRange(group.Meetings);
        }

        return new(result, [.. Inside(inside, loops), .. Between(between, loops, asked)]);
    }

    private static IEnumerable<Repair> Inside(List<Crossing> places, ImmutableArray<SourcedLoop> loops) =>
        places.Count == 0 ? [] : [new("overlap-united", places.Count, 0, [.. places.Select(c => c.Place)],
            $"{CountText.Format(places.Count, "crossing")} inside filled shapes {CountText.WasOrWere(places.Count)} "
            + "resolved: overlapping parts were made one, as the nonzero fill rule requires, the first in "
            + $"{loops[places[0].LoopA].Path.Source}.")];

    private static IEnumerable<Repair> Between(List<Crossing> places, ImmutableArray<SourcedLoop> loops, bool asked)
    {
        if (places.Count == 0) return [];
        var shapes = places.SelectMany(c => (int[])[loops[c.LoopA].Path.Shape, loops[c.LoopB].Path.Shape]).Distinct().Count();
        return [new("shapes-united", places.Count, 0, [.. places.Select(c => c.Place)],
            $"{shapes} shapes that overlap or touch were united{(asked ? "" : ": they are filled with one colour")}, first "
            + $"{loops[places[0].LoopA].Path.Source} and {loops[places[0].LoopB].Path.Source}.")];
    }

    /// <summary>The edges of the filled area; null when they can't be distinguished.</summary>
    private static List<Loop>? Edges(ImmutableArray<SourcedLoop> loops, Tolerance tolerance, CancellationToken cancellation)
    {
        if (loops.Sum(l => l.Loop.Segments.Length) > MaxPieces) return null;
        var edges = new List<Segment>();
        var known = new PointGrid(tolerance.Coincident);
        var area = new FilledArea(loops);
        foreach (var piece in LoopSplitting.Split([.. loops.Select(l => l.Loop)], tolerance))
        {
            cancellation.ThrowIfCancellationRequested();
            var aside = piece.DirectionAt(0.5).Left * (4 * tolerance.Coincident);
            var middle = piece.PointAt(0.5);
            var (left, right) = (area.Contains(middle + aside), area.Contains(middle - aside));
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
    }
}
