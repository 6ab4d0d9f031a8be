using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Removes lines and arcs that were drawn more than once, wholly or in part, in either direction.</summary>
/// <remarks>
/// An edge that two touching outlines share is also drawn twice, on purpose. Its ends show it: removing the second
/// copy would leave both of them open, so there the copies stay.
/// </remarks>
internal static class DoubledPieces
{
    /// <summary>The pieces without needless copies; null when too many lie on each other to resolve.</summary>
    public static Healed<ImmutableArray<Piece>>? Remove(ImmutableArray<Piece> pieces, Tolerance tolerance,
        CancellationToken cancellation)
    {
        var nodes = EndNodes.Find(pieces, tolerance, cancellation);
        if (FindSets(pieces, nodes, tolerance, cancellation) is not { } found) return null;
        if (found.IsEmpty) return new(pieces, []);

        var degrees = nodes.Degrees();
        foreach (var set in found) Count(set, -1);
        ImmutableArray<DoubledSet> doubled = [.. found.Where(set => !NeedsAll(set))];
        if (doubled.IsEmpty) return new(pieces, []);

        var result = pieces.Select(p => (Piece?)p).ToArray();
        foreach (var set in doubled)
        {
            foreach (var member in set.Members) result[member] = null;
            result[set.Members[0]] = pieces[set.Members[0]] with { Segment = set.Kept };
        }

        var count = doubled.Sum(s => s.Members.Length - 1);
        var longest = doubled.Max(s => s.Members.Select(m => pieces[m].Segment.Length).Order().SkipLast(1).Last());
        return new([.. result.OfType<Piece>()], [new("duplicate-removed", count, longest,
            [.. doubled.SelectMany(s => s.Members.Skip(1)).Select(m => pieces[m].Segment.PointAt(0.5))],
            FormattableString.Invariant(
            $"{CountText.Format(count, "line or arc", "lines or arcs")} drawn again on top of others ")
            + FormattableString.Invariant($"{CountText.WasOrWere(count)} removed, the longest {longest:0.###} mm, the first ")
            + FormattableString.Invariant($"{pieces[doubled[0].Members[^1]].Path.Source}."))]);

        // Changes the degrees from all copies to the one kept, or back.
        void Count(DoubledSet set, int sign)
        {
            foreach (var member in set.Members)
            {
                degrees[nodes.From[member]] += sign;
                degrees[nodes.To[member]] += sign;
            }

            degrees[set.KeptFrom] -= sign;
            degrees[set.KeptTo] -= sign;
        }

        bool NeedsAll(DoubledSet set)
        {
            var ends = set.Members.SelectMany(m => new[] { nodes.From[m], nodes.To[m] }).Distinct().ToList();
            var openWithOne = ends.Count(n => degrees[n] % 2 != 0);
            Count(set, 1);
            if (ends.Count(n => degrees[n] % 2 != 0) < openWithOne) return true;
            Count(set, -1);
            return false;
        }
    }

    /// <summary>Exact copies first; one of each then takes part in the search for overlaps.</summary>
    private static ImmutableArray<DoubledSet>? FindSets(ImmutableArray<Piece> pieces, EndNodes nodes, Tolerance tolerance,
        CancellationToken cancellation)
    {
        var repeated = RepeatedPieces.Find(pieces, nodes, tolerance, cancellation);
        var copies = repeated.SelectMany(s => s.Members.Skip(1)).ToHashSet();
        var lines = Enumerable.Range(0, pieces.Length).Where(i => !pieces[i].Segment.IsArc && !copies.Contains(i))
            .ToImmutableArray();
        if (OverlappingLines.Find(pieces, lines, nodes, tolerance, cancellation) is not { } overlapping) return null;
        var copiesOf = repeated.ToDictionary(s => s.Members[0]);
        ImmutableArray<DoubledSet> whole = [.. overlapping.Select(s => s with
        {
            Members = [.. s.Members.SelectMany(m => copiesOf.Remove(m, out var set) ? set.Members : [m]).Order()],
        })];
        return [.. copiesOf.Values.Concat(whole).OrderBy(s => s.Members[0])];
    }
}

/// <summary>Pieces that cover the same line or arc.</summary>
/// <param name="Members">Numbers of the pieces, at least two, in drawing order.</param>
/// <param name="Kept">The one piece that covers them all.</param>
/// <param name="KeptFrom">The node it starts from.</param>
/// <param name="KeptTo">The node it leads to.</param>
internal sealed record DoubledSet(ImmutableArray<int> Members, Segment Kept, int KeptFrom, int KeptTo);
