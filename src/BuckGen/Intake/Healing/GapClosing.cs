using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Healing;

/// <summary>Brings open ends that nearly meet to one place.</summary>
internal static class GapClosing
{
    // With more ends than this within one joining distance, it is unclear which belong together.
    private const int NearestCandidates = 64;

    /// <summary>The nodes with each pair of open ends in reach of each other made one; the nearest pairs go first.</summary>
    public static Healed<EndNodes> Close(EndNodes nodes, Tolerance tolerance, CancellationToken cancellation)
    {
        if (tolerance.Join <= tolerance.Coincident) return new(nodes, []);
        var degrees = nodes.Degrees();
        var merged = Enumerable.Range(0, degrees.Length).ToArray();
        var places = nodes.Places.ToArray();
        var ownPiece = new HashSet<(int, int)>(nodes.From.Zip(nodes.To, (a, b) => (Math.Min(a, b), Math.Max(a, b))));
        var (closed, largest) = (new List<Vec2>(), 0.0);
        foreach (var (distance, a, b) in Candidates(nodes.Places, degrees, tolerance.Join, cancellation))
        {
            cancellation.ThrowIfCancellationRequested();
            // A single piece never closes on itself: what it would enclose is nothing.
            if (degrees[a] % 2 == 0 || degrees[b] % 2 == 0 || ownPiece.Contains((a, b))) continue;
            (degrees[a], degrees[b]) = (0, 0);
            merged[b] = a;
            places[a] = nodes.Places[a].MidpointTo(nodes.Places[b]);
            closed.Add(places[a]);
            largest = Math.Max(largest, distance);
        }

        return new(
            new([.. nodes.From.Select(n => merged[n])], [.. nodes.To.Select(n => merged[n])], places),
            closed.Count == 0 ? [] : [new("gap-joined", closed.Count, largest, [.. closed], FormattableString.Invariant(
                $"{CountText.Format(closed.Count, "gap")} between ends {CountText.WasOrWere(closed.Count)} closed, the ")
                + FormattableString.Invariant($"largest {largest:0.####} mm; up to {tolerance.Join:0.####} mm is closed."))]);
    }

    private static IEnumerable<(double Distance, int A, int B)> Candidates(Vec2[] places, int[] degrees, double reach,
        CancellationToken cancellation)
    {
        var grid = new PointGrid(reach);
        var pairs = new List<(double, int, int)>();
        for (var b = 0; b < places.Length; b++)
        {
            cancellation.ThrowIfCancellationRequested();
            if (degrees[b] % 2 == 0) continue;
            foreach (var a in grid.Near(places[b]).Take(NearestCandidates)) pairs.Add((places[a].DistanceTo(places[b]), a, b));
            grid.Add(places[b], b);
        }

        // Among equal distances the ends drawn next to each other come first.
        return pairs.OrderBy(p => p.Item1).ThenBy(p => p.Item3 - p.Item2).ThenBy(p => p.Item2);
    }
}
