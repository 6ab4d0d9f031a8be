using System.Collections.Immutable;
using BuckGen.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.HPRtree;

namespace BuckGen.Outlines.Healing;

/// <summary>Straight pieces that lie on each other for a stretch, be it all of their length.</summary>
internal static class OverlappingLines
{
    public static IEnumerable<DoubledSet> Find(ImmutableArray<Piece> pieces, EndNodes nodes, Tolerance tolerance)
    {
        var lines = Enumerable.Range(0, pieces.Length).Where(i => !pieces[i].Segment.IsArc).ToList();
        var sets = Sets(lines, pieces, tolerance);
        return sets.Select(set => Covered([.. set], pieces, nodes));
    }

    private static IEnumerable<IEnumerable<int>> Sets(List<int> lines, ImmutableArray<Piece> pieces, Tolerance tolerance)
    {
        var tree = new HPRtree<int>();
        foreach (var i in lines) tree.Insert(Box(pieces[i].Segment, tolerance), i);
        tree.Build();
        var root = lines.ToDictionary(i => i, i => i);
        foreach (var i in lines)
            foreach (var j in tree.Query(Box(pieces[i].Segment, tolerance)))
                if (j < i && Common(pieces[i].Segment, pieces[j].Segment, tolerance) is not null) root[RootOf(i)] = RootOf(j);
        return lines.GroupBy(RootOf).Where(set => set.Skip(1).Any());

        int RootOf(int i)
        {
            while (root[i] != i) i = root[i] = root[root[i]];
            return i;
        }
    }

    private static Envelope Box(Segment s, Tolerance tolerance)
    {
        var b = s.Bounds.Grown(tolerance.Coincident);
        return new(b.MinX, b.MaxX, b.MinY, b.MaxY);
    }

    /// <summary>The stretch that two straight pieces have in common; null when they do no more than meet.</summary>
    public static Segment? Common(Segment a, Segment b, Tolerance tolerance)
    {
        var (longer, shorter) = a.Chord.LengthSquared >= b.Chord.LengthSquared ? (a, b) : (b, a);
        var along = longer.Chord.Unit();
        var (start, end) = (shorter.Start - longer.Start, shorter.End - longer.Start);
        if (Math.Abs(along.Cross(start)) > tolerance.Coincident || Math.Abs(along.Cross(end)) > tolerance.Coincident) return null;
        var from = Math.Max(Math.Min(along.Dot(start), along.Dot(end)), 0);
        var to = Math.Min(Math.Max(along.Dot(start), along.Dot(end)), longer.Chord.Length);
        return to - from > 2 * tolerance.Coincident ? new(longer.Start + along * from, longer.Start + along * to) : null;
    }

    /// <summary>The set with the one line that covers all of its members.</summary>
    private static DoubledSet Covered(ImmutableArray<int> members, ImmutableArray<Piece> pieces, EndNodes nodes)
    {
        var longest = pieces[members.MaxBy(m => pieces[m].Segment.Chord.LengthSquared)].Segment;
        var along = longest.Chord.Unit();
        var ends = members.SelectMany(m => new[] { (pieces[m].Segment.Start, nodes.From[m]), (pieces[m].Segment.End, nodes.To[m]) }).ToList();
        var (from, to) = (ends.MinBy(e => along.Dot(e.Item1)), ends.MaxBy(e => along.Dot(e.Item1)));
        return new(members, new(from.Item1, to.Item1), from.Item2, to.Item2);
    }
}
