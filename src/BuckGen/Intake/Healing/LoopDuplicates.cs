using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>
/// Leaves out loops that were drawn a second time, as with a fill and a stroke; together they would enclose nothing.
/// </summary>
internal static class LoopDuplicates
{
    private const int MaxComparisons = 5_000_000;

    /// <summary>The loops without those drawn again.</summary>
    /// <exception cref="OutlineException">Too many loops lie about one centre.</exception>
    public static Healed<ImmutableArray<SourcedLoop>> Remove(ImmutableArray<SourcedLoop> loops, string name, Tolerance tolerance,
        CancellationToken cancellation)
    {
        // Two fits of one curve may lie on either side of it.
        var reach = 2 * tolerance.Chord;
        var byCentre = new PointGrid(reach);
        var indexes = new Dictionary<int, SegmentIndex>();
        var kept = ImmutableArray.CreateBuilder<SourcedLoop>(loops.Length);
        var (again, largest, first, comparisons) = (new List<Vec2>(), 0.0, "", 0);
        foreach (var loop in loops)
        {
            var centre = loop.Loop.Bounds.Centre;
            var deviation = byCentre.Near(centre).Order()
                .Select(i => Compared(loop.Loop, i)).FirstOrDefault(d => d <= reach, double.PositiveInfinity);
            if (deviation <= reach)
            {
                if (again.Count == 0) first = loop.Path.Source;
                again.Add(loop.Loop.Segments[0].PointAt(0.5));
                largest = Math.Max(largest, deviation);
                continue;
            }

            byCentre.Add(centre, kept.Count);
            kept.Add(loop);
        }

        return new(kept.ToImmutable(), again.Count == 0 ? [] :
            [new("duplicate-removed", again.Count, largest, [.. again],
                $"{CountText.Format(again.Count, "closed outline")} drawn again on top of another "
                + $"{CountText.WasOrWere(again.Count)} left out, the first {first}.")]);

        double Compared(Loop loop, int i)
        {
            cancellation.ThrowIfCancellationRequested();
            return ++comparisons <= MaxComparisons
                ? Deviation(loop, kept[i].Loop, () => IndexOf(i), reach)
                : throw new OutlineException(
                    $"{name}: {loops.Length} outlines take more than {MaxComparisons} comparisons to find those drawn "
                    + "twice, since very many lie about one centre; draw each outline once");
        }

        SegmentIndex IndexOf(int i) => indexes.TryGetValue(i, out var index) ? index : indexes[i] = new(kept[i].Loop.Segments);
    }

    /// <summary>The maximum distance between two loops, mm; infinite when it is beyond the reach.</summary>
    private static double Deviation(Loop loop, Loop other, Func<SegmentIndex> edges, double reach)
    {
        var (a, b) = (loop.Bounds, other.Bounds);
        // For small shapes the reach shrinks with them: a ring with a thin wall is two loops.
        reach = Math.Min(reach, a.Diagonal / 100);
        if (Math.Abs(a.Width - b.Width) > 2 * reach || Math.Abs(a.Height - b.Height) > 2 * reach) return double.PositiveInfinity;
        var largest = MaxDistance(loop, edges(), reach);
        return largest <= reach ? Math.Max(largest, MaxDistance(other, new(loop.Segments), reach)) : largest;
    }

    private static double MaxDistance(Loop loop, SegmentIndex edges, double reach)
    {
        var largest = 0.0;
        foreach (var s in loop.Segments)
        {
            largest = Math.Max(largest,
                Math.Max(edges.DistanceWithin(s.Start, reach), edges.DistanceWithin(s.PointAt(0.5), reach)));
            if (largest > reach) return double.PositiveInfinity;
        }

        return largest;
    }
}
