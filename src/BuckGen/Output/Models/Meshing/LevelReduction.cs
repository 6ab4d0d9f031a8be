using BuckGen.Geometry;

namespace BuckGen.Output.Models.Meshing;

/// <summary>
/// Leaves out redundant outlines: those that straight lines from an outline below to one above pass through anyway.
/// </summary>
internal static class LevelReduction
{
    /// <summary>Maximum number of levels that one straight wall passes through: each is compared with all below it.</summary>
    private const int MaxRun = 100;

    /// <summary>The levels that are needed, the first and the last among them.</summary>
    /// <param name="levels">Levels, lowest first.</param>
    /// <param name="reach">Farthest, mm, that a corner moves from one level to the next and is still known as the same.</param>
    public static IEnumerable<Level> Apply(IReadOnlyList<Level> levels, double reach)
    {
        yield return levels[0];
        for (var kept = 0; kept + 1 < levels.Count;)
        {
            List<Level> run = [levels[kept]];
            List<Segment[][]> pieces = [[.. levels[kept].Plan.Loops.Select(l => l.Segments.ToArray())]];
            while (run.Count < MaxRun && kept + run.Count < levels.Count && levels[kept + run.Count] is var next
                && Followed(pieces[^1], next.Plan, reach) is { } followed)
            {
                run.Add(next);
                pieces.Add(followed);
                if (AreStraight(run, pieces)) continue;
                run.RemoveAt(run.Count - 1);
                break;
            }

            kept += Math.Max(1, run.Count - 1);
            yield return levels[kept];
        }
    }

    /// <summary>True when every corner between goes straight from the first level to the last.</summary>
    private static bool AreStraight(List<Level> run, List<Segment[][]> pieces)
    {
        Segment[] from = [.. pieces[0].SelectMany(p => p)], to = [.. pieces[^1].SelectMany(p => p)];
        for (var i = 1; i + 1 < run.Count; i++)
        {
            var share = (run[i].Height - run[0].Height) / (run[^1].Height - run[0].Height);
            if (pieces[i].SelectMany(p => p).Index().Any(p => !LiesBetween(p.Item, from[p.Index], to[p.Index], share)))
                return false;
        }

        return true;
    }

    private static bool LiesBetween(Segment piece, Segment from, Segment to, double share)
    {
        var (start, height) = (from.Start + (to.Start - from.Start) * share, from.Sagitta + (to.Sagitta - from.Sagitta) * share);
        return piece.Start.DistanceTo(start) <= SolidBuilder.ChordError / 2
            && Math.Abs(piece.Sagitta - height) <= SolidBuilder.ChordError / 2;
    }

    /// <summary>
    /// The loops of a plan in the order of those they follow, each from the same corner on; null when there are more, fewer or
    /// other ones.
    /// </summary>
    private static Segment[][]? Followed(Segment[][] before, Region plan, double reach)
    {
        var free = plan.Loops.ToList();
        if (free.Count != before.Length) return null;
        var followed = new List<Segment[]>();
        foreach (var old in before)
        {
            var (loop, at, _) = free.Where(l => l.Segments.Length == old.Length)
                .SelectMany(l => l.Segments.Select((s, i) => (Loop: l, At: i, Distance: s.Start.DistanceTo(old[0].Start))))
                .DefaultIfEmpty().MinBy(c => c.Distance);
            if (loop is null) return null;
            free.Remove(loop);
            Segment[] turned = [.. loop.Segments[at..], .. loop.Segments[..at]];
            if (old.Zip(turned).Any(p => p.First.IsArc != p.Second.IsArc || p.First.Start.DistanceTo(p.Second.Start) > reach))
                return null;
            followed.Add(turned);
        }

        return [.. followed];
    }
}
