using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Intake.Healing;

/// <summary>Lines and arcs drawn exactly again, in either direction.</summary>
internal static class RepeatedPieces
{
    public static ImmutableArray<DoubledSet> Find(ImmutableArray<Piece> pieces, EndNodes nodes, Tolerance tolerance,
        CancellationToken cancellation)
    {
        var sets = ImmutableArray.CreateBuilder<DoubledSet>();
        var byEnds = Enumerable.Range(0, pieces.Length)
            .GroupBy(i => (Math.Min(nodes.From[i], nodes.To[i]), Math.Max(nodes.From[i], nodes.To[i])));
        foreach (var sameEnds in byEnds.Where(g => g.Skip(1).Any()))
        {
            // Between the same two ends there may be several arcs; the middle distinguishes them.
            var middles = new PointGrid(tolerance.Coincident);
            var copies = new Dictionary<int, List<int>>();
            foreach (var i in sameEnds)
            {
                cancellation.ThrowIfCancellationRequested();
                var middle = pieces[i].Segment.PointAt(0.5);
                var first = middles.Near(middle).DefaultIfEmpty(i).First();
                if (first == i) middles.Add(middle, i);
                if (!copies.TryGetValue(first, out var list)) copies[first] = list = [];
                list.Add(i);
            }

            foreach (var (first, all) in copies)
                if (all.Count > 1) sets.Add(new([.. all], pieces[first].Segment, nodes.From[first], nodes.To[first]));
        }

        return sets.ToImmutable();
    }
}
