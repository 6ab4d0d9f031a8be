using System.Collections.Immutable;
using BuckGen.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.HPRtree;

namespace BuckGen.Intake.Healing;

/// <summary>Straight pieces that lie on each other for a stretch.</summary>
/// <remarks>
/// Lines are sorted by direction first, and those of about one direction are boxed along it. So neither a fan of lines nor a
/// field of slanted parallels makes every line look like a neighbour of every other.
/// </remarks>
internal static class OverlappingLines
{
    private const int Directions = 3000;
    private const int MaxComparisons = 5_000_000;

    /// <summary>The sets of lines that overlap; null when there are too many to resolve.</summary>
    /// <param name="pieces">All pieces.</param>
    /// <param name="lines">The numbers of those to check.</param>
    /// <param name="nodes">Where they end.</param>
    /// <param name="tolerance">The tolerances of the run.</param>
    /// <param name="cancellation">Stops the search.</param>
    public static ImmutableArray<DoubledSet>? Find(
        ImmutableArray<Piece> pieces, ImmutableArray<int> lines, EndNodes nodes, Tolerance tolerance,
        CancellationToken cancellation)
    {
        var root = new Dictionary<int, int>();
        var comparisons = 0;
        var byDirection = lines.ToLookup(i => DirectionOf(pieces[i].Segment));
        foreach (var group in byDirection)
        {
            var (sin, cos) = Math.SinCos((group.Key + 0.5) * Math.PI / Directions);
            var tree = new HPRtree<int>();
            foreach (var i in group) tree.Insert(Box(pieces[i].Segment, new(cos, sin), tolerance), i);
            tree.Build();
            // A line near the edge between two directions has its match in either.
            foreach (var i in group.Concat(byDirection[(group.Key + 1) % Directions]))
                foreach (var j in tree.Query(Box(pieces[i].Segment, new(cos, sin), tolerance)))
                {
                    if (++comparisons > MaxComparisons) return null;
                    cancellation.ThrowIfCancellationRequested();
                    if (j != i && RootOf(i) != RootOf(j) && Common(pieces[i].Segment, pieces[j].Segment, tolerance) is not null)
                        root[RootOf(i)] = RootOf(j);
                }
        }

        return [.. root.Keys.Concat(root.Values).Distinct().Order().GroupBy(RootOf)
            .Select(set => Covered([.. set], pieces, nodes))];

        int RootOf(int i)
        {
            while (root.TryGetValue(i, out var next))
            {
                if (root.TryGetValue(next, out var beyond)) root[i] = next = beyond;
                i = next;
            }

            return i;
        }
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

    /// <summary>The direction of a line, forward and backward alike, as one of a fixed number.</summary>
    private static int DirectionOf(Segment line)
    {
        var turn = Math.Atan2(line.Chord.Y, line.Chord.X) / Math.PI;
        return (int)Math.Floor((turn - Math.Floor(turn)) * Directions) % Directions;
    }

    /// <summary>The bounds of a line, measured along and across a direction.</summary>
    private static Envelope Box(Segment line, Vec2 along, Tolerance tolerance)
    {
        var b = Bounds
            .FromCorners(new(along.Dot(line.Start), along.Cross(line.Start)), new(along.Dot(line.End), along.Cross(line.End)))
            .Grown(tolerance.Coincident);
        return new(b.MinX, b.MaxX, b.MinY, b.MaxY);
    }

    /// <summary>The set with the one line that covers all of its members.</summary>
    private static DoubledSet Covered(ImmutableArray<int> members, ImmutableArray<Piece> pieces, EndNodes nodes)
    {
        var longest = pieces[members.MaxBy(m => pieces[m].Segment.Chord.LengthSquared)].Segment;
        var along = longest.Chord.Unit();
        var ends = members
            .SelectMany(m =>
                new (Vec2 Place, int Node)[] { (pieces[m].Segment.Start, nodes.From[m]), (pieces[m].Segment.End, nodes.To[m]) })
                    .ToList();
        var (from, to) = (ends.MinBy(e => along.Dot(e.Place)), ends.MaxBy(e => along.Dot(e.Place)));
        return new(members, new(from.Place, to.Place), from.Node, to.Node);
    }
}
