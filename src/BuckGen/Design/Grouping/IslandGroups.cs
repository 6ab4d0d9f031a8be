using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Design.Grouping;

/// <summary>Sorts what is drawn into the fewest groups of neighbours that fit a frame each.</summary>
internal static class IslandGroups
{
    /// <summary>Things that overlap by this share of the narrower belong together, as a dot belongs to its letter.</summary>
    private const double Overlap = 0.5;

    /// <summary>The groups, in reading order, as numbers of the units in them.</summary>
    /// <param name="units">Bounds of what can't be parted.</param>
    /// <param name="fits">True when a buck for all within these bounds fits the frame.</param>
    public static ImmutableArray<ImmutableArray<int>> Create(IReadOnlyList<Bounds> units, Func<Bounds, bool> fits)
    {
        int[] all = [.. Enumerable.Range(0, units.Count)];
        // In one line across; line by line, the upper first; column by column; in one line up. Of equals the first is taken.
        ImmutableArray<int>[][] ways =
        [
            Line(all, units, Across, fits),
            [.. Lines(all, units, Up).AsEnumerable().Reverse().SelectMany(row => Line(row, units, Across, fits))],
            [.. Lines(all, units, Across).SelectMany(column => Line(column, units, Up, fits))],
            Line(all, units, Up, fits),
        ];
        return [.. ways.MinBy(w => w.Length)!];
    }

    private static (double From, double To) Across(Bounds b) => (b.MinX, b.MaxX);

    private static (double From, double To) Up(Bounds b) => (b.MinY, b.MaxY);

    /// <summary>Runs of neighbours along one direction, the fewest that fit; of those the most even.</summary>
    private static ImmutableArray<int>[] Line(
        int[] members, IReadOnlyList<Bounds> units, Func<Bounds, (double From, double To)> along, Func<Bounds, bool> fits)
    {
        var order = Together(members, units, along).SelectMany(letter => fits(Around(letter, units)) ? [letter]
            : letter.OrderBy(i => along(units[i])).Select(i => new[] { i })).ToArray();
        // best[n]: number of groups and squared lengths of the first n, and where the last group starts.
        var best = new (int Count, double Squares, int Start)[order.Length + 1];
        for (var n = 1; n <= order.Length; n++)
        {
            best[n] = (int.MaxValue, 0, n - 1);
            for (var start = n - 1; start >= 0; start--)
            {
                var bounds = Around(order[start..n].SelectMany(o => o), units);
                // A unit that fits no frame stands alone; a finding names it.
                if (start < n - 1 && !fits(bounds)) continue;
                var (from, to) = along(bounds);
                var way = (Count: best[start].Count + 1, Squares: best[start].Squares + (to - from) * (to - from), Start: start);
                if ((way.Count, way.Squares).CompareTo((best[n].Count, best[n].Squares)) < 0) best[n] = way;
            }
        }

        var groups = new List<ImmutableArray<int>>();
        for (var end = order.Length; end > 0; end = best[end].Start)
            groups.Add([.. order[best[end].Start..end].SelectMany(o => o)]);
        groups.Reverse();
        return [.. groups];
    }

    /// <summary>What stands over each other, in the order of a direction.</summary>
    private static List<int[]> Together(
        int[] members, IReadOnlyList<Bounds> units, Func<Bounds, (double From, double To)> along) =>
        Chained(members, units, along, (end, from, width) => end - from >= Overlap * width);

    /// <summary>Rows or columns: what overlaps at all in a direction.</summary>
    private static List<int[]> Lines(
        int[] members, IReadOnlyList<Bounds> units, Func<Bounds, (double From, double To)> along) =>
        Chained(members, units, along, (end, from, _) => end > from);

    private static List<int[]> Chained(int[] members, IReadOnlyList<Bounds> units, Func<Bounds, (double From, double To)> along,
        Func<double, double, double, bool> joins)
    {
        var chains = new List<List<int>>();
        var (start, end) = (0.0, 0.0);
        foreach (var member in members.OrderBy(i => along(units[i])))
        {
            var (from, to) = along(units[member]);
            if (chains.Count > 0 && joins(Math.Min(end, to), from, Math.Min(to - from, end - start))) chains[^1].Add(member);
            else
            {
                chains.Add([member]);
                (start, end) = (from, to);
            }

            end = Math.Max(end, to);
        }

        return [.. chains.Select(c => c.ToArray())];
    }

    private static Bounds Around(IEnumerable<int> members, IReadOnlyList<Bounds> units) =>
        members.Aggregate(Bounds.Nothing, (b, i) => b.With(units[i]));
}
