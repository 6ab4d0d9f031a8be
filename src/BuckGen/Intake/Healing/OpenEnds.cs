using System.Collections.Immutable;
using System.Globalization;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Decides what to do with pieces that did not close: an outline with a gap must never be taken for a mark.</summary>
/// <remarks>
/// A chain that runs along a closed loop is that loop drawn again. A mark, such as a centre line, is a chain that is one straight
/// line. Its ends lie farther from all other open ends than a quarter of its length. No closed outline can be missing between so
/// distant ends. Everything else is an outline that was left open.
/// </remarks>
internal static class OpenEnds
{
    private const double MarkClearance = 0.25;
    private const int ChainsSearched = 200;

    public static (ImmutableArray<Repair> Repairs, ImmutableArray<ReadNote> Notes) Judge(
        ImmutableArray<OpenChain> open, ImmutableArray<SourcedLoop> loops, string name, Tolerance tolerance,
        CancellationToken cancellation)
    {
        if (open.IsEmpty) return ([], []);
        var edges = new SegmentIndex(loops.SelectMany(l => l.Loop.Segments));
        var again = open.ToLookup(c => LiesOn(c, edges, 2 * tolerance.Chord, cancellation));
        var (doubled, loose) = (again[true].ToImmutableArray(), again[false].ToImmutableArray());
        var ends = EndsOf(loose);
        var wrong = loose.Where((c, i) => loops.IsEmpty || !IsMark(c, i, loose, ends, cancellation)).ToImmutableArray();
        if (!wrong.IsEmpty) throw new OutlineException($"{name}: {Describe(wrong, loops.Length, tolerance, cancellation)}");

        ImmutableArray<Repair> repairs = doubled.IsEmpty ? [] :
            [new("duplicate-removed", doubled.Length, 0, [.. doubled.Select(c => c.Segments[c.Segments.Length / 2].PointAt(0.5))],
                $"{CountText.Format(doubled.Length, "open line")} along a closed outline "
                + $"{CountText.WasOrWere(doubled.Length)} left out, the first {doubled[0].Path.Source}.")];
        ImmutableArray<ReadNote> notes = loose.IsEmpty ? [] :
            [new("open-lines-ignored",
                $"{CountText.Format(loose.Length, "single straight line")} with open ends "
                + $"{CountText.WasOrWere(loose.Length)} taken for a construction mark and left out, the first "
                + $"{Described(loose[0])}.")];
        return (repairs, notes);
    }

    private static bool LiesOn(OpenChain chain, SegmentIndex edges, double reach, CancellationToken cancellation) =>
        chain.Segments.All(s =>
    {
        cancellation.ThrowIfCancellationRequested();
        return new[] { 0, 0.29, 0.5, 1 }.All(t => edges.DistanceWithin(s.PointAt(t), reach) <= reach);
    });

    /// <summary>The start of each chain, then its end.</summary>
    private static BoxTree EndsOf(ImmutableArray<OpenChain> chains) =>
        BoxTree.FromItems([.. chains.SelectMany(c => new[] { c.Start, c.End })], end => Bounds.FromCorners(end, end));

    private static bool IsMark(OpenChain chain, int number, ImmutableArray<OpenChain> all, BoxTree ends,
        CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        if (chain.Segments is not [{ IsArc: false } line]) return false;
        var clearance = MarkClearance * line.Length;
        return !IsNearOther(line.Start) && !IsNearOther(line.End);

        bool IsNearOther(Vec2 end)
        {
            // From small to large, so that among very many ends the near ones are found without listing them all.
            for (var reach = clearance / 256; reach <= clearance; reach *= 4)
                if (ends.Query(Bounds.FromCorners(end, end).Grown(reach)).Select(e => e / 2).Any(other => other != number
                    && (all[other].Start.DistanceTo(end) < clearance || all[other].End.DistanceTo(end) < clearance))) return true;
            return false;
        }
    }

    private static string Describe(ImmutableArray<OpenChain> wrong, int closed, Tolerance tolerance,
        CancellationToken cancellation)
    {
        var (a, b, chain) = NearestEnds(wrong, cancellation);
        var gap = a.DistanceTo(b);
        var outlook = closed == 0 ? $"nothing is closed, only {CountText.Format(wrong.Length, "open line")}" : wrong.Length == 1
            ? "the outline is open" : $"{wrong.Length} outlines are open";
        return string.Create(CultureInfo.InvariantCulture,
            $"{outlook}: nearest ends at {a} and {b}, {gap:F3} mm apart ({Described(chain)}); join them or raise the "
            + $"joining distance (now {tolerance.Join:0.####} mm)");
    }

    private static (Vec2 A, Vec2 B, OpenChain Chain) NearestEnds(ImmutableArray<OpenChain> chains, CancellationToken cancellation)
    {
        var best = (A: chains[0].Start, B: chains[0].End, Chain: chains[0]);
        // The message needs one place; in a drawing with very many open ends the first ones suffice.
        foreach (var chain in chains.Take(ChainsSearched))
        {
            cancellation.ThrowIfCancellationRequested();
            // A lone line has two ends as well, but bringing those together would not close anything.
            if (chain.Segments.Length > 1 || chain.Segments[0].IsArc) Offer(chain.Start, chain.End, chain);
            foreach (var other in chains)
                if (!ReferenceEquals(other, chain))
                    foreach (var end in (ReadOnlySpan<Vec2>)[other.Start, other.End])
                    {
                        Offer(chain.Start, end, chain);
                        Offer(chain.End, end, chain);
                    }
        }

        return best;

        void Offer(Vec2 a, Vec2 b, OpenChain chain)
        {
            if (a.DistanceTo(b) < best.A.DistanceTo(best.B)) best = (a, b, chain);
        }
    }

    private static string Described(OpenChain chain) =>
        chain.Path.Layer.Length == 0 ? chain.Path.Source : $"{chain.Path.Source}, layer {Excerpt.Shorten(chain.Path.Layer)}";
}
