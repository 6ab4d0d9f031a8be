namespace BuckGen.Geometry.Offsetting;

/// <summary>Removes pieces that lead nowhere because others replace them.</summary>
/// <remarks>
/// Where two pieces of outline nearly touch, what they are moved to lies on each other to the last digits, and no zone can tell
/// which of the two goes. Both stay, and one of them ends in nothing. It is not needed if all of it lies on others, or if it is
/// too short to decide.
/// </remarks>
internal static class LooseEnds
{
    private const int Samples = 4;

    /// <summary>The pieces that begin and end at others, and those that end loose without a reason.</summary>
    /// <param name="pieces">Directed pieces.</param>
    /// <param name="reach">How far apart, mm, ends may lie that belong together.</param>
    public static List<Segment> Prune(List<Segment> pieces, double reach)
    {
        while (true)
        {
            var loose = Loose(pieces, reach);
            if (loose.Count == 0) return pieces;
            var index = new SegmentIndex(pieces);
            // One after the other: of two that lie on each other only one may go.
            var needless = new HashSet<int>();
            foreach (var i in loose)
                if (pieces[i].Length <= reach || LiesOnOthers(pieces, i, needless, index)) needless.Add(i);
            if (needless.Count == 0) return pieces;
            pieces = [.. pieces.Where((_, i) => !needless.Contains(i))];
        }
    }

    private static List<int> Loose(List<Segment> pieces, double reach)
    {
        var (starts, ends) = (new EndGrid(pieces.Select(p => p.Start), reach), new EndGrid(pieces.Select(p => p.End), reach));
        var loose = new List<int>();
        for (var i = 0; i < pieces.Count; i++)
            if (!HasOther(starts, pieces[i].End, i) || !HasOther(ends, pieces[i].Start, i)) loose.Add(i);
        return loose;
    }

    private static bool HasOther(EndGrid grid, Vec2 place, int own)
    {
        foreach (var (number, _) in grid.Near(place))
            if (number != own) return true;
        return false;
    }

    private static bool LiesOnOthers(List<Segment> pieces, int number, HashSet<int> gone, SegmentIndex index)
    {
        for (var k = 0; k <= Samples; k++)
        {
            var p = pieces[number].PointAt((double)k / Samples);
            var near = index.IndicesIntersecting(Bounds.FromCorners(p, p).Grown(Precision.MinPieceLength));
            if (!near.Any(j => j != number && !gone.Contains(j) && pieces[j].DistanceTo(p) <= Precision.MinPieceLength))
                return false;
        }

        return true;
    }
}
