using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Outlines.Healing;

/// <summary>Arcs drawn exactly again, in either direction. Lines are left to <see cref="OverlappingLines"/>.</summary>
internal static class RepeatedPieces
{
    public static IEnumerable<DoubledSet> Find(ImmutableArray<Piece> pieces, EndNodes nodes, Tolerance tolerance)
    {
        var arcs = Enumerable.Range(0, pieces.Length).Where(i => pieces[i].Segment.IsArc);
        foreach (var sameEnds in arcs.GroupBy(i => (Math.Min(nodes.From[i], nodes.To[i]), Math.Max(nodes.From[i], nodes.To[i]))))
        {
            var rest = sameEnds.ToList();
            while (rest.Count > 1)
            {
                var (first, middle) = (rest[0], pieces[rest[0]].Segment.PointAt(0.5));
                var same = rest.Where(i => tolerance.AreCoincident(pieces[i].Segment.PointAt(0.5), middle)).ToImmutableArray();
                if (same.Length > 1) yield return new(same, pieces[first].Segment, nodes.From[first], nodes.To[first]);
                rest.RemoveAll(i => same.Contains(i));
            }
        }
    }
}
